using Doughwright.Book.Papers;

namespace Doughwright.App.Desk.Search;

/// <summary>A paper that has all words, in its text or in what is said of it.</summary>
/// <param name="Name">What it is called in the book.</param>
/// <param name="Title">What it calls itself.</param>
/// <param name="Lines">The first of its lines in which a word stands, and then what is said of it.</param>
/// <param name="InTitle">Whether all of them stand in what it calls itself.</param>
internal sealed record FoundPaper(PaperSort Sort, string Name, string Title, IReadOnlyList<string> Lines, bool InTitle)
{
    /// <summary>Where it can be read.</summary>
    public string Address => Sort switch
    {
        PaperSort.Recipe => "/recipes/" + Uri.EscapeDataString(Name),
        PaperSort.Kitchen => "/open?kitchen=" + Uri.EscapeDataString(Name),
        PaperSort.Ingredient => "/larder/own/" + Uri.EscapeDataString(Name),
        _ => "/notes/" + Uri.EscapeDataString(Name),
    };
}
