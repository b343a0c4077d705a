using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>What comes back by a step back, in words of the text: "back to “oven: 170 C fan”".</summary>
internal static class BackWords
{
    private const int Longest = 60;

    /// <summary>As it stands on a button; null where there is nothing to step back to.</summary>
    public static string? Undo(AuthorsBook book, Paper paper, Voice voice) =>
        paper.Before is { } before ? voice.Say("write.undo", ("back", Said(() => Lines(book.Papers.TextOf(paper.State)!, book.Papers.TextOf(before)!, voice), paper, voice))) : null;

    /// <summary>What comes back; where the state before cannot be read, it is only called by what was done since. Nothing else hangs on it.</summary>
    public static string Said(Func<string> back, Paper paper, Voice voice)
    {
        try
        {
            return back();
        }
        catch (BookException)
        {
            return voice.Say("back.before", ("did", paper.Did));
        }
    }

    public static string Lines(string now, string then, Voice voice)
    {
        var (here, there) = (Written(now), Written(then));
        var comes = Less(there, here);
        var goes = Less(here, there);
        return (comes, goes) switch
        {
            ([var line], _) when line.Length <= Longest => voice.Say("back.line", ("line", line)),
            ([], [var line]) when line.Length <= Longest => voice.Say("back.line-gone", ("line", line)),
            ([], []) => voice.Words["back.order"],
            _ => voice.Say("back.lines", ("count", Math.Max(comes.Count, goes.Count))),
        };
    }

    private static string[] Written(string text) => [.. text.ReplaceLineEndings("\n").Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0)];

    private static List<string> Less(IEnumerable<string> lines, IEnumerable<string> others)
    {
        var left = others.ToList();
        return [.. lines.Where(line => !left.Remove(line))];
    }
}
