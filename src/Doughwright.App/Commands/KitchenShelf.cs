using System.Text;
using Doughwright.Book.Papers;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>Kitchens that come with the program, by the name of their file or by their own, and kitchens in files.</summary>
internal static class KitchenShelf
{
    private const string Folder = "demo/kitchens/";
    private const string Ending = ".yaml";

    /// <summary>What came of looking for a kitchen.</summary>
    /// <param name="Kitchen">Null when its text could not be understood.</param>
    /// <param name="IsImpossible">All of it was understood, and no kitchen is like that.</param>
    public readonly record struct Found(Kitchen? Kitchen, IReadOnlyList<Finding> Findings, bool Understood, bool IsImpossible = false);

    public static IReadOnlyList<string> Names =>
        [.. EmbeddedFile.Under(typeof(KitchenShelf).Assembly, Folder).Select(name => name[Folder.Length..^Ending.Length]).Order(StringComparer.Ordinal)];

    /// <summary>A kitchen by name, or in a file. Null with a fault when there is none.</summary>
    /// <param name="texts">What is rehearsed in it: a name that only the book of one of them knows is told with its address there.</param>
    public static Found? Find(string given, IEnumerable<string> texts, Faults faults)
    {
        if (Shipped(given) is { } kitchen)
        {
            return new(kitchen, [], true);
        }

        if (File.Exists(given) || Directory.Exists(given) || LooksLikeFile(given))
        {
            return InputFile.Read(given, Stream.Null, faults, PaperSort.Kitchen) is { } file ? Read(file) : null;
        }

        if (InBook(given, texts, faults.Voice) is { } address)
        {
            faults.Add("kitchen-of-book", ("given", given), ("address", address));
        }
        else
        {
            faults.AddUnknown("kitchen-unknown", given, Names);
        }

        return null;
    }

    /// <summary>Address of a kitchen of this name in the book that a recipe is taken from; null when there is none.</summary>
    private static string? InBook(string given, IEnumerable<string> texts, Voice voice) => texts
        .Select(BookAddress.Read).OfType<BookAddress>().Select(recipe => BookAddress.Of(recipe.Book, given))
        .FirstOrDefault(address => InputFile.Read(address, Stream.Null, new Faults(voice), PaperSort.Kitchen) is not null);

    private static Kitchen? Shipped(string given)
    {
        foreach (var name in Names)
        {
            if (string.Equals(name, given, StringComparison.OrdinalIgnoreCase))
            {
                return ReadShipped(name);
            }
        }

        return Names.Select(ReadShipped).FirstOrDefault(kitchen => string.Equals(kitchen.Name, given, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The text of a kitchen that comes with the program.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    public static byte[] Bytes(string name) => EmbeddedFile.Bytes(typeof(KitchenShelf).Assembly, Folder + name + Ending);

    private static Kitchen ReadShipped(string name) =>
        KitchenText.Read(Encoding.UTF8.GetString(Bytes(name))).Kitchen
        ?? throw new InvalidOperationException($"The kitchen {name} that comes with the program cannot be read.");

    /// <summary>The kitchen in a text; what is wrong with its bytes is wrong with it.</summary>
    public static Found Read(InputFile file)
    {
        var reading = KitchenText.Read(file.Text);
        var findings = file.Findings.Concat(reading.Findings).Select(InKitchen);
        return new(reading.Kitchen, [.. findings], reading.Understood && file.Findings.Count == 0, reading.IsImpossible && file.Findings.Count == 0);
    }

    /// <summary>Lines and columns of such a finding are those of the kitchen's own file, so its place says so.</summary>
    private static Finding InKitchen(Finding finding) =>
        finding with { Place = finding.Place.Length == 0 ? "kitchen-file" : $"kitchen-file.{finding.Place}" };

    private static bool LooksLikeFile(string given) => BookAddress.Read(given) is not null || given.Contains('/') || given.Contains('\\') || given.EndsWith(Ending, StringComparison.OrdinalIgnoreCase);
}
