using Doughwright.App.Commands;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Swaps;

/// <summary>A recipe with something swapped: asked in sentences, answered with what it costs, and written down as a recipe of its own.</summary>
public sealed partial class SwapPage
{
    private RecipeFile? File { get; set; }

    private SwapAsk Ask { get; set; } = null!;

    private SwappedRecipe? Made { get; set; }

    private SwapView? View { get; set; }

    private IReadOnlyList<SwapOffered> Offers { get; set; } = [];

    private string Title { get; set; } = "";

    private IReadOnlyList<Fault> Refused { get; set; } = [];

    /// <summary>Why what is asked was not understood, or is not done.</summary>
    private IReadOnlyList<Fault> Refusals => [.. Ask.Faults, .. (View?.Reasons ?? []).Select(reason => new Fault(reason.Message, reason.WayOut))];

    /// <summary>Everything that could stand in, for the field to offer.</summary>
    private IEnumerable<string> Names => File!.Formula!.Larder.Ingredients.Select(row => row.Name).Distinct().Order(StringComparer.OrdinalIgnoreCase);

    private string Path => $"{Home}/swaps";

    private string Back => Speaker.To(Home);

    protected override void OnInitialized()
    {
        File = RecipeFile.Read(Recipe, Folder);
        if (File is not { Recipe: not null } file)
        {
            Navigation.NotFound();
            File = null;
            return;
        }

        if (SwapAsk.OfForm(Path, Query) is { } address)
        {
            Navigation.NavigateTo(address);
            return;
        }

        Ask = SwapAsk.Of(Query, file, Voice);
        Offers = SwapOffered.All(file, swap => Speaker.To(QueryHelpers.AddQueryString(Path, SwapAsk.ReplaceName, swap)), Voice);
        if (Ask.Wishes.Count > 0)
        {
            Answer(file);
        }
    }

    private void Answer(RecipeFile file)
    {
        var options = new Options();
        var faults = SwapAsk.FaultsOf(Voice, options);
        Made = SwappedRecipe.Of(file.Reading, Ask.Wishes, file.Text, file.Findings, [], options.Replace.Name, faults);
        if (Made is null)
        {
            Ask = Ask with { Faults = faults.All, Refused = Enumerable.Range(0, Ask.Wishes.Count).ToHashSet() };
            return;
        }

        View = SwapView.Of(Made, file, Ask.Wishes, With, Voice);
        Title = View.Title ?? "";
        if (Made.Swapped.IsRefused)
        {
            // Those that are refused by themselves; where only all together are, all of them.
            var alone = Enumerable.Range(0, Ask.Wishes.Count).Where(i => Swapping.Swap(file.Recipe!, [Ask.Wishes[i]], Larder.Shipped).IsRefused).ToHashSet();
            Ask = Ask with { Refused = alone.Count > 0 ? alone : Enumerable.Range(0, Ask.Wishes.Count).ToHashSet() };
        }
    }

    private bool IsRefusedAt(int index) => Ask.Refused.Contains(index);

    /// <summary>This page with another thing standing in for one swap.</summary>
    private string With(int swap, string name) => Speaker.To(Ask.Wishes.Select((wish, index) => (wish, by: index == swap ? name : wish.By))
        .Aggregate(Path, (address, each) => QueryHelpers.AddQueryString(address, SwapAsk.ReplaceName, $"{each.wish.What}{(each.wish.Part is { } part ? "@" + part : "")}={each.by}")));

    private string? DropOf(int index) => Ask.Slots.Count > 1 ? SwapAsk.Without(Path, Query, index) : null;

    private async Task Keep()
    {
        var form = await Form();
        Title = form[OwnRecipe.TitleName].ToString().Trim();
        var faults = new Faults(Voice);
        if (Made?.Swapped.Recipe is { } recipe && OwnRecipe.Lay(recipe, Title, File!.Reading.Document, File.Paper.State, Folder, faults) is { } address)
        {
            SeeThere(Speaker.To(address));
            return;
        }

        Refused = faults.All;
        Refuse();
    }
}
