using Doughwright.App.Commands;
using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Text;
using Doughwright.Book.Opening;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.TextForm;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>The larder: an ingredient is found by words as a person writes them, or in the list of all. One's own come first.</summary>
public sealed partial class LarderPage : DeskPage
{
    private const int Longest = 200;
    private const int MostHits = 20;

    [SupplyParameterFromQuery]
    private string? Words { get; set; }

    /// <summary>Name of an own ingredient that was taken away just now.</summary>
    [SupplyParameterFromQuery]
    private string? Taken { get; set; }

    private string Holds { get; set; } = "";

    private string Said { get; set; } = "";

    private string? CanComeBack { get; set; }

    private IReadOnlyList<TakenRow> TakenAway { get; set; } = [];

    private IReadOnlyList<Fault> Refused { get; set; } = [];

    private IReadOnlyList<LarderRow> Hits { get; set; } = [];

    private IReadOnlyList<LarderRow> Own { get; set; } = [];

    private IReadOnlyList<LarderRole> Roles { get; set; } = [];

    private string? Asking => ShelfAddress.MeasuresOf(Voice);

    protected override void OnInitialized()
    {
        Holds = LarderText.Holding(Larder.Shipped, Voice);
        CanComeBack = Taken is { Length: > 0 } taken && Folder.IngredientTexts.CanPutBack(taken) ? taken : null;
        var own = OwnPaper.All(Folder);
        var words = (Words ?? "").Trim();
        if (!words.Any(char.IsLetterOrDigit) || words.Length > Longest)
        {
            Own = [.. own.Select(paper => LarderRow.Of(paper, Voice))];
            Roles = LarderRole.All(Larder.Shipped, Voice);
            TakenAway = TakenRow.All(Folder.IngredientTexts, CanComeBack, text => IngredientText.Read(text).Own?.Name);
            return;
        }

        var larder = Larder.Shipped.With(own.Select(paper => paper.Own?.Ingredient).OfType<Ingredient>());
        var asked = new LarderAsked(larder, words, larder.Find(words, []), larder.Search(words, most: MostHits));
        Said = asked.Hits.Count == 0 ? Voice.Say("larder-nothing", ("words", words)) : LarderWords.InARecipe(asked, Voice);
        Hits = [.. asked.Hits.Select(hit => RowOf(hit.Ingredient, own)).OrderByDescending(row => row.IsOwn)];
    }

    private LarderRow RowOf(Ingredient row, IReadOnlyList<OwnPaper> own) =>
        own.FirstOrDefault(paper => ReferenceEquals(paper.Own?.Ingredient, row)) is { } paper ? LarderRow.Of(paper, Voice) : LarderRow.Of(row, Voice);

    private async Task PutBack()
    {
        var form = await Form();
        var name = form[TakenRow.Back].ToString();
        var faults = new Faults(Voice);
        try
        {
            if (Folder.IngredientTexts.PutBack(name))
            {
                SeeThere(Speaker.To(OwnPaper.AddressOf(name)));
                return;
            }

            Said = Voice.Say("larder.not-there", ("name", name));
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
        }

        Refused = faults.All;
        Refuse();
    }
}
