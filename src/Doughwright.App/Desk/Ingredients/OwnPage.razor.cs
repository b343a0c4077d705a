using Doughwright.App.Commands;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.States;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>An ingredient of the author's own: its figures, the recipes it stands in, and those that hold another version of it.</summary>
public sealed partial class OwnPage : DeskPage
{
    /// <summary>Name in the book.</summary>
    [Parameter]
    public string Name { get; set; } = "";

    [Inject]
    private UsedIn UsedIn { get; set; } = null!;

    private OwnPaper? Paper { get; set; }

    private IngredientView? View { get; set; }

    private IReadOnlyList<OtherwiseRow> Otherwise { get; set; } = [];

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private string CountsAs => View?.CountsAs ?? "";

    private string Action => Speaker.To(Paper!.Address);

    protected override void OnInitialized() => Lay();

    private void Lay()
    {
        Paper = OwnPaper.Find(Name, Folder);
        if (Paper is null)
        {
            Navigation.NotFound();
            return;
        }

        if (Paper.Own is not { } own)
        {
            return;
        }

        View = IngredientView.Of(own, UsedIn, Voice);
        Otherwise = [.. Holding.Otherwise(own, UsedIn).Select(holding => OtherwiseRow.Of(holding, own, Voice))];
    }

    private async Task Bring()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        Carry(faults, Speaker.To(Paper!.Address), () => Paper.Own is { } own && OtherwiseRow.Read(form["bring"].ToString()) is var (recipe, shown) && Holding.Bring(own, recipe, shown, Folder, faults));
    }

    private async Task Step()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        Carry(faults, Speaker.To(Paper!.Address), () => Fields.Stepping.Step(Folder.IngredientTexts, Paper.Paper, RecipeStates.Number(form["shown"]), form["step"] == "on", Paper.Title, faults));
    }

    private void TakeAway()
    {
        var faults = new Faults(Voice);
        Carry(faults, Speaker.To(QueryHelpers.AddQueryString("/larder", "taken", Name)), () => Folder.IngredientTexts.TakeAway(Name));
    }

    private void Carry(Faults faults, string after, Func<bool> deed)
    {
        try
        {
            if (deed())
            {
                SeeThere(after);
                return;
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("paper-not-written", ("folder", Folder.IngredientTexts.Path), ("reason", problem.Message));
        }

        Faults = faults.All;
        Lay();
        Refuse();
    }
}
