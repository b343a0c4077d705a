namespace Doughwright.Publishing.Pages.Style;

/// <summary>
/// How much a page has to say on paper, in lines of its two columns. A long one is set closer, so that two sheets hold it; what goes in and the notes stand
/// left, the method right, and the notes on where the figures come from go where there is room.
/// </summary>
internal static class PrintLength
{
    /// <summary>
    /// Lines, as counted here, that a column may have to be sure of two sheets of the shorter paper as it is set by default. Found by printing the recipes of
    /// the house and those of the tests.
    /// </summary>
    private const double RoomyLeft = 72;
    private const double RoomyRight = 78;

    private const double LettersRight = 64;
    private const double LettersLeft = 50;

    /// <summary>Classes of the page.</summary>
    public static string ClassOf(PageContent content)
    {
        var (left, right, basis) = (Left(content), Right(content), Lines(content.Basis, LettersLeft) + 2);
        var isMethodLong = right + basis > RoomyRight && right > left;
        var isLong = left + (isMethodLong ? basis : 0) > RoomyLeft || right + (isMethodLong ? 0 : basis) > RoomyRight;
        return "reader" + (isLong ? " long" : "") + (isMethodLong ? " method-long" : "");
    }

    private static double Right(PageContent content) => 3 + content.Steps.Sum(step =>
        2.6 + Lines(step.Paragraphs, LettersRight) + (step.Cue is { } cue ? Lines([cue], LettersRight) : 0));

    private static double Left(PageContent content) =>
        content.Parts.Sum(part => 2 + (part.Note is null ? 0 : 1) + part.Lines.Sum(line => Math.Max(1, Math.Ceiling(Math.Max(line.Name.Length / 22.0, line.Second.Length / 26.0)))))
        + 2 + (content.Tools.Count / 2.0)
        + (content.Rooms is { } rooms ? 5 + (2 * rooms.Rows.Count) : 0)
        + Lines(content.Swaps, LettersLeft) + Lines(content.Keeping, LettersLeft) + Lines(content.Cautions, LettersLeft) + Lines(content.Unsettled, LettersLeft)
        + (2 * new[] { content.Swaps, content.Keeping, content.Cautions }.Count(list => list.Count > 0));

    private static double Lines(IEnumerable<string> texts, double letters) => texts.Sum(text => Math.Ceiling(text.Length / letters));
}
