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

    /// <summary>What is told to be said; the next form starts from it.</summary>
    private StandingForm Shown { get; set; } = null!;

    /// <summary>Whether it is said to be published, and no state of it is.</summary>
    private bool IsPublishedInNoState { get; set; }

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
        (Typed, Shown, Words) = (StandingForm.Of(own), StandingForm.Of(own), Standings.Words(own, Voice));
        IsPublishedInNoState = Typed.Standing == Standings.Published && !Folder.Book.Kept.All(PaperSort.Recipe, Recipe).Any(kept => kept.Published);
        (Families, Seasons) = (Known(said.Values, Saying.Family), Known(said.Values, Saying.Season));
    }

    private static string[] Known(IEnumerable<IReadOnlyDictionary<Saying, string>> said, Saying what) =>
        [.. said.Select(each => each.GetValueOrDefault(what)).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)];

    private async Task Say()
    {
        var (now, form, faults) = (Typed, await Form(), new Faults(Voice));
        var (typed, shown) = (StandingForm.Of(form), StandingForm.ShownOf(form, now));
        IReadOnlyList<(Saying What, string Now)> meanwhile = [];
        try
        {
            meanwhile = typed.Say(Folder, Recipe, shown, DateOnly.FromDateTime(Clock.Now), faults);
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
        }

        if (!faults.Any)
        {
            SeeThere(Speaker.To(Home + "/standing"));
            return;
        }

        (Typed, Shown) = (typed.Again(shown, now), typed.ShownNext(shown, now, meanwhile));
        Refused = faults.All;
        Refuse();
    }
}
