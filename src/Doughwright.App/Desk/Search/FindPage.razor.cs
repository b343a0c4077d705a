using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Opening;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Search;

/// <summary>Search over everything that is written in the book.</summary>
public sealed partial class FindPage
{
    /// <summary>So many papers are shown; who wants fewer says more words.</summary>
    private const int Most = 100;

    [SupplyParameterFromQuery]
    private string? Words { get; set; }

    private IReadOnlyList<FoundPaper> Found { get; set; } = [];

    private string Said { get; set; } = "";

    private string? Asking => ShelfAddress.MeasuresOf(Voice);

    protected override void OnInitialized()
    {
        if (string.IsNullOrWhiteSpace(Words))
        {
            return;
        }

        try
        {
            var all = Finder.Find(Folder, Words);
            Found = [.. all.Take(Most)];
            Said = all.Count switch
            {
                0 => Voice.Say("find.none", ("words", Words.Trim())),
                1 => Voice.Say("find.one", ("words", Words.Trim())),
                > Most => Voice.Say("find.too-many", ("count", all.Count), ("shown", Most), ("words", Words.Trim())),
                _ => Voice.Say("find.many", ("count", all.Count), ("words", Words.Trim())),
            };
        }
        catch (BookException problem)
        {
            Said = problem.Message;
        }
    }
}
