using Doughwright.App.Commands;
using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Layout;
using Doughwright.Book.Opening;
using Doughwright.Engine.TextForm;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.States;

/// <summary>The recipes that were taken off the shelf. Each is in the book with all its states, and is put back as it was.</summary>
public sealed partial class TakenOffPage : DeskPage
{
    public const string Address = "/taken-off";

    /// <summary>Name of the recipe that was taken off just now.</summary>
    [SupplyParameterFromQuery]
    private string? Taken { get; set; }

    private TakenRow? JustNow { get; set; }

    private IReadOnlyList<TakenRow> All { get; set; } = [];

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    /// <summary>Address of the page that tells that a recipe was taken off just now.</summary>
    public static string Of(string recipe) => QueryHelpers.AddQueryString(Address, "taken", recipe);

    protected override void OnInitialized() => Lay();

    private void Lay()
    {
        var all = TakenRow.All(Folder.RecipeTexts, null, text => RecipeText.Read(text).Recipe?.Title);
        JustNow = all.FirstOrDefault(row => row.Name == Taken);
        All = [.. all.Where(row => row != JustNow)];
    }

    private async Task PutBack()
    {
        var name = (await Form())[TakenRow.Back].ToString();
        var faults = new Faults(Voice);
        try
        {
            if (Folder.RecipeTexts.PutBack(name))
            {
                SeeThere(Speaker.To($"/recipes/{Uri.EscapeDataString(name)}"));
                return;
            }

            faults.Add("off-shelf-not-there", ("name", name));
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
        }

        Faults = faults.All;
        Lay();
        Refuse();
    }
}
