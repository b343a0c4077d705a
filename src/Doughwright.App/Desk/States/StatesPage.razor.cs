using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Opening;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.States;

/// <summary>The states of a recipe: the one it is in is kept by a name, and any other is brought back or set beside it.</summary>
public sealed partial class StatesPage
{
    private RecipeStates? states;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    private StatesView? View { get; set; }

    private IReadOnlyList<FamilyMember> Relatives { get; set; } = [];

    private FamilyDrawn? Drawn { get; set; }

    private Published? Given { get; set; }

    private string Title { get; set; } = "";

    private string Name { get; set; } = "";

    private string Note { get; set; } = "";

    /// <summary>Whether readers have it, as it was ticked.</summary>
    private bool IsGiven { get; set; }

    /// <summary>The published state that a correction was typed for.</summary>
    private string Kept { get; set; } = "";

    private string Correction { get; set; } = "";

    private string Place { get; set; } = "";

    /// <summary>What a recipe that comes of this one is to be called.</summary>
    private string Offshoot { get; set; } = "";

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private string Action => Speaker.To($"{Home}/states");

    protected override void OnInitialized() => Lay();

    private void Lay()
    {
        if (RecipeFile.Read(Recipe, Folder) is not { } file)
        {
            Navigation.NotFound();
            return;
        }

        var days = new StateDays(Clock, Voice);
        Title = file.Recipe?.Title is { Length: > 0 } title ? title : Recipe;
        states = new(file, Folder, days, Voice);
        View = StatesView.Of(file, states, Folder, days, Voice);
        Given = new(Recipe, Folder, days, Voice);
        var family = new Family(Folder, days, Voice);
        Relatives = family.All(file.Paper);
        Drawn = FamilyDrawn.Of(Title, file.Paper, states, Relatives, [states.Now], days, Voice);
    }

    private async Task Keep()
    {
        var form = await Form();
        (Name, Note, IsGiven) = (form["name"].ToString().Trim(), form["note"].ToString().Trim(), form.ContainsKey("published"));
        Carry(faults => states!.Keep(RecipeStates.Number(form["shown"]), Name, Note, IsGiven, faults));
    }

    /// <summary>A recipe of its own, as this one is now: it knows what it came from, and is written on.</summary>
    private async Task Grow()
    {
        var form = await Form();
        Offshoot = form[OwnRecipe.TitleName].ToString().Trim();
        string? address = null;
        Carry(
            faults => (address = states!.Grow(Offshoot, faults)) is not null,
            () => address + "/write");
    }

    private async Task Correct()
    {
        var form = await Form();
        (Kept, Correction, Place) = (form["kept"].ToString(), form["text"].ToString().Trim(), form["place"].ToString().Trim());
        Carry(faults => Given!.Add(RecipeStates.Number(Kept), Correction, Place, faults));
    }

    private async Task Make()
    {
        var form = await Form();
        Carry(faults => Given!.Make(RecipeStates.Number(form["made"]), faults));
    }

    private async Task BringBack()
    {
        var form = await Form();
        Carry(faults => states!.BringBack(RecipeStates.Number(form["shown"]), RecipeStates.Number(form["state"]), faults));
    }

    private void TakeOff() => Carry(
        faults =>
        {
            if (Folder.RecipeTexts.TakeAway(Recipe))
            {
                return true;
            }

            faults.Add("standing-gone", ("name", Recipe));
            return false;
        },
        () => TakenOffPage.Of(Recipe));

    /// <param name="after">Where the browser looks once it is done; null for this page.</param>
    private void Carry(Func<Faults, bool> deed, Func<string>? after = null)
    {
        var faults = new Faults(Voice);
        try
        {
            if (deed(faults))
            {
                SeeThere(after is null ? Action : Speaker.To(after()));
                return;
            }
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
        }

        Faults = faults.All;
        // What is shown now is what the next form starts from.
        Lay();
        Refuse();
    }
}
