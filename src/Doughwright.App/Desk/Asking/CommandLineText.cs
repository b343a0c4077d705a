using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Desk.Asking;

/// <summary>A question as it is typed into a terminal, where the program lies.</summary>
internal static class CommandLineText
{
    private const string Program = "./doughwright";
    private const string Plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_./,:=@%+";

    /// <param name="recipe">Name of the recipe's file.</param>
    /// <param name="command">Which of the commands is asked.</param>
    public static string Of(string recipe, IEnumerable<Asked> asked, ShelfFolder shelf, string command = "rehearse") =>
        With($"{Program} {command} {Quoted(shelf.RecipeTexts.FileOf(recipe))}", asked, shelf);

    /// <summary>Two recipes, or two states of one, side by side.</summary>
    /// <param name="first">As the command line names it.</param>
    /// <param name="because">Whether it is asked what moved each figure.</param>
    public static string OfTwo(string first, string second, IEnumerable<Asked> asked, bool because, ShelfFolder shelf) =>
        With($"{Program} compare {Quoted(first)} {Quoted(second)}{(because ? " --because" : "")}", asked, shelf);

    private static string With(string command, IEnumerable<Asked> asked, ShelfFolder shelf) => string.Join(' ', asked
        .Select(item => $"--{item.Name} {Quoted(item.Name == Question.Kitchen ? Kitchen(item.Value, shelf) : item.Value)}")
        .Prepend(command));

    /// <summary>A kitchen that is as it came with the program goes by its name, any other by its file: the command line reads its own text under the name.</summary>
    private static string Kitchen(string asked, ShelfFolder shelf)
    {
        var file = KitchenAsked.FileOf(asked, shelf) ?? asked;
        return KitchenShelf.Names.Contains(file) && shelf.Kitchen(file) is { } bytes && bytes.AsSpan().SequenceEqual(KitchenShelf.Bytes(file)) ? file : shelf.KitchenTexts.FileOf(file);
    }

    /// <summary>As a shell takes it: what is not plain stands in single quotes.</summary>
    private static string Quoted(string value) =>
        value.Length > 0 && value.All(letter => Plain.Contains(letter)) ? value : $"'{value.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
