namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>Several lines in one field, as they are pasted from a page: what stands between them is seen, and can be typed. See typing.js.</summary>
internal static class PastedLines
{
    private const char Between = '⏎';

    public static bool AreSeveral(string typed) => typed.Contains(Between, StringComparison.Ordinal);

    /// <summary>Takes one after the other, up to the first that is refused.</summary>
    /// <param name="take">Takes a line, and says whether it did.</param>
    /// <returns>What stays, the refused one first; nothing where all were taken.</returns>
    public static string Rest(string typed, Func<string, bool> take)
    {
        if (!AreSeveral(typed))
        {
            return take(typed) ? "" : typed;
        }

        var lines = typed.Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return string.Join($" {Between} ", lines.SkipWhile(take));
    }
}
