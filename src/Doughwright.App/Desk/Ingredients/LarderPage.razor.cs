using Doughwright.App.Commands;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>The larder: an ingredient is found by words as a person writes them, or in the list of all.</summary>
public sealed partial class LarderPage : DeskPage
{
    private const int Longest = 200;
    private const int MostHits = 20;

    [SupplyParameterFromQuery]
    private string? Words { get; set; }

    private string Holds { get; set; } = "";

    private string Said { get; set; } = "";

    private IReadOnlyList<LarderRow> Hits { get; set; } = [];

    private IReadOnlyList<LarderRole> Roles { get; set; } = [];

    private string? Asking => ShelfAddress.MeasuresOf(Voice);

    protected override void OnInitialized()
    {
        var larder = Larder.Shipped;
        Holds = LarderText.Holding(larder, Voice);
        var words = (Words ?? "").Trim();
        if (!words.Any(char.IsLetterOrDigit) || words.Length > Longest)
        {
            Roles = LarderRole.All(larder, Voice);
            return;
        }

        var asked = new LarderAsked(larder, words, larder.Find(words, []), larder.Search(words, most: MostHits));
        Said = asked.Hits.Count == 0 ? Voice.Say("larder-nothing", ("words", words)) : LarderWords.InARecipe(asked, Voice);
        Hits = [.. asked.Hits.Select(hit => LarderRow.Of(hit.Ingredient, Voice))];
    }
}
