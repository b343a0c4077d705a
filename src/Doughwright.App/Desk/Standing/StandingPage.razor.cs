using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Standing;

/// <summary>What an author says of a recipe beside its text: how it stands, when it was last baked, its family and its season.</summary>
public sealed partial class StandingPage
{
    [Inject]
    private ShelfClock Clock { get; set; } = null!;

    private RecipeFile? File { get; set; }

    private string Title { get; set; } = "";

    private StandingForm Typed { get; set; } = null!;

    private IReadOnlyList<string> Families { get; set; } = [];

    private IReadOnlyList<string> Seasons { get; set; } = [];

    private string? Words { get; set; }

    private IReadOnlyList<Fault> Refused { get; set; } = [];

    protected override void OnInitialized()
    {
        File = RecipeFile.Read(Recipe, Folder);
        if (File is null)
        {
            Navigation.NotFound();
            return;
        }

        Title = Voice.Say("standing.title", ("title", File.Recipe?.Title ?? Recipe));
        var said = Folder.Book.Said.All(PaperSort.Recipe);
        var own = said.GetValueOrDefault(Recipe);
        (Typed, Words) = (StandingForm.Of(own), Standings.Words(own, Voice));
        (Families, Seasons) = (Known(said.Values, Saying.Family), Known(said.Values, Saying.Season));
    }

    private static string[] Known(IEnumerable<IReadOnlyDictionary<Saying, string>> said, Saying what) =>
        [.. said.Select(each => each.GetValueOrDefault(what)).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)];

    private async Task Say()
    {
        var (before, faults) = (Typed, new Faults(Voice));
        Typed = StandingForm.Of(await Form());
        try
        {
            if (Typed.Say(Folder, Recipe, before, DateOnly.FromDateTime(Clock.Now), faults))
            {
                SeeThere(Speaker.To(Home + "/standing"));
                return;
            }
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
        }

        Refused = faults.All;
        Refuse();
    }
}
