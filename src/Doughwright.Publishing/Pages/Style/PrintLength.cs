namespace Doughwright.Publishing.Pages.Style;

/// <summary>
/// How a page is set on paper. What goes in and the notes stand left, the method right; the notes on where the figures come from go under either. A page
/// that would need a third sheet is set closer where that saves it.
/// </summary>
internal static class PrintLength
{
    /// <summary>
    /// A sheet within the margins of the page, in CSS pixels: US Letter, the shorter of the two, and A4, which is narrower, so that lines there are this
    /// much more.
    /// </summary>
    private static readonly (double Sheet, double More)[] Papers = [(954, 1), (1021, 1.015)];

    private const int Sheets = 2;

    /// <summary>
    /// What is counted comes out longer than what is printed, because texts are counted by their letters and the gaps before what does not break add up.
    /// So much over two sheets still went onto two in every one of 130 printings of the recipes of the house and of the tests, and more in none.
    /// </summary>
    private const double Counted = 49;

    /// <summary>Classes of the page.</summary>
    public static string ClassOf(PageContent content)
    {
        var lengths = Enum.GetValues<Arrangement>().Select(arrangement => (arrangement, Lengths: PrintColumns.LengthsOf(content, arrangement, Papers).ToArray())).ToArray();
        bool Fits(double[] all, int papers, double over) => Enumerable.Range(0, papers).All(i => all[i] <= (Sheets * Papers[i].Sheet) + over);
        // The first that surely fits; else the shortest that fits, on both papers or on one; else a third sheet, set so that it reads well.
        foreach (var (arrangement, all) in lengths)
        {
            if (Fits(all, Papers.Length, 0))
            {
                return NameOf(arrangement);
            }
        }

        var (shortest, least) = lengths.MinBy(each => each.Lengths[0]);
        return NameOf(Fits(least, Papers.Length, Counted) || least[^1] <= (Sheets * Papers[^1].Sheet) + Counted ? shortest : Arrangement.Roomy);
    }

    private static string NameOf(Arrangement arrangement) => arrangement switch
    {
        Arrangement.RoomyNotesLeft => "reader method-long",
        Arrangement.Close => "reader long",
        Arrangement.CloseNotesLeft => "reader long method-long",
        _ => "reader",
    };
}

/// <summary>The ways to set a page, the one that reads best first.</summary>
internal enum Arrangement
{
    Roomy,

    /// <summary>Where the figures come from stands under what goes in, beside a long method.</summary>
    RoomyNotesLeft,
    Close,
    CloseNotesLeft,
}
