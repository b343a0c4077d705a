using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Pages.Style;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Preview;

/// <summary>The page for readers that an address asks for.</summary>
/// <param name="Read">What it comes to: the kitchen of the page.</param>
/// <param name="Refusals">What of the address is not used.</param>
internal sealed record PageAsked(RecipeFile File, Understood Read, IReadOnlyList<Refusal> Refusals, Voice Voice)
{
    private const string Opening = "<style>";
    private const string Closing = "</style>";

    /// <summary>The command that writes the same file; null where a kitchen is set that has no file.</summary>
    public string? CommandLine { get; private init; }

    private ShelfFolder Shelf { get; init; } = null!;

    /// <summary>Null when there is no such recipe, or its text is not understood.</summary>
    public static PageAsked? Of(string name, string query, ShelfFolder shelf, Words words)
    {
        if (RecipeFile.Read(name, shelf) is not { Recipe: { } recipe } file)
        {
            return null;
        }

        var question = Question.Of(query, PageAddress.Save);
        var voice = new Voice(words, MeasureNames.Of(question.First(Question.Measures)));
        var asked = question.Only(question.Items.Where(item => PageAddress.Asks.Contains(item.Name)));
        var others = question.Items.Where(item => !PageAddress.Asks.Contains(item.Name)).Select(item => Refusal.Unknown(item, PageAddress.Asks, voice));
        var read = new QuestionReader(recipe, name, shelf, words).Read(asked, voice.Measures);
        return new(file, read, [.. others, .. read.Refusals], voice)
        {
            Shelf = shelf,
            CommandLine = read.Accepted.Items.Any(item => Question.OfKitchen.Contains(item.Name)) ? null : CommandLineText.Of(name, [.. read.Accepted.Items, new("out", ".")], shelf, "page"),
        };
    }

    /// <summary>The page as the command line writes it, the policy that lets its own style be used and nothing else, and what its file is called.</summary>
    public (MadePage Page, string Policy, string FileName) Made()
    {
        var page = MadePage.Of(
            File.Recipe!, File.Text, File.Findings, Read.Request.Kitchen, Read.KitchenFindings, File.Notes, Voice, name => Shelf.Book.Photos.Find(name)?.Bytes);
        return (page, Policy(Encoding.UTF8.GetString(page.Bytes)), PageFile.NameOf(File.Recipe!.Title));
    }

    private static string Policy(string page)
    {
        var from = page.IndexOf(Opening, StringComparison.Ordinal) + Opening.Length;
        var style = page[from..page.IndexOf(Closing, from, StringComparison.Ordinal)];
        return $"default-src 'none'; style-src {PageStyle.SourceOf(style)}; font-src data:; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'; sandbox";
    }
}
