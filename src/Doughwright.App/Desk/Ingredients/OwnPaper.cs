using System.Text;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>An ingredient of the author's own as it is in the book.</summary>
/// <param name="Paper">Its name there and its state.</param>
internal sealed record OwnPaper(Paper Paper, string Text, IngredientReading Reading)
{
    public string Name => Paper.Name;

    /// <summary>Null when its text is not understood, or cannot be true.</summary>
    public OwnIngredient? Own => Reading.Sound ? Reading.Own : null;

    /// <summary>What it calls itself, or its name in the book.</summary>
    public string Title => Reading.Own is { } own ? own.Name : Name;

    public string Address => AddressOf(Name);

    public static string AddressOf(string name) => "/larder/own/" + Uri.EscapeDataString(name);

    public static IReadOnlyList<OwnPaper> All(ShelfFolder shelf) => [.. shelf.IngredientTexts.Papers().Select(paper => Of(paper, shelf))];

    /// <summary>Null when the book has none of this name.</summary>
    public static OwnPaper? Find(string name, ShelfFolder shelf) => shelf.IngredientTexts.Find(name) is { } paper ? Of(paper, shelf) : null;

    /// <summary>Those that can be taken into a recipe.</summary>
    public static IReadOnlyList<OwnIngredient> AtHand(ShelfFolder shelf) => [.. All(shelf).Select(paper => paper.Own).OfType<OwnIngredient>()];

    private static OwnPaper Of(Paper paper, ShelfFolder shelf)
    {
        var text = Encoding.UTF8.GetString(shelf.IngredientTexts.Read(paper));
        return new(paper, text, IngredientText.Read(text));
    }
}
