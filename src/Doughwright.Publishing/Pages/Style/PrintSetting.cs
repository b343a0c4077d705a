namespace Doughwright.Publishing.Pages.Style;

/// <summary>Heights of what a printed page is made of, in CSS pixels, as its style sets them: measured in print at the width of US Letter.</summary>
/// <param name="Item">A line of a list, and what is around an item.</param>
/// <param name="Head">Head of a list with the gap before it.</param>
/// <param name="Step">Name of a step and the gaps around it.</param>
/// <param name="Words">Words and cue of a step: height of a line and letters in it.</param>
/// <param name="Time">The same of its times.</param>
/// <param name="Method">What stands over the steps.</param>
/// <param name="Strip">What stands around the drawing of the day.</param>
/// <param name="Rooms">The table by room without its rows and notes.</param>
/// <param name="Room">A row of it.</param>
internal sealed record PrintSetting(
    (double Line, double Around) Item, double Head, double Step, (double Height, int Letters) Words, (double Height, int Letters) Time, double Method, double Strip, double Rooms, double Room)
{
    public static PrintSetting Roomy { get; } = new((15.25, 6.3), 41.8, 29.8, (17.39, 62), (15.86, 76), 79, 46.7, 96.2, 33.4);

    public static PrintSetting Close { get; } = new((13.9, 4.7), 36.5, 21.9, (15.33, 66), (13, 80), 73.6, 41.3, 83.7, 30.5);

    /// <summary>Lines that a text takes.</summary>
    public static int Lines(string text, int letters) => Math.Max(1, (text.Length + letters - 1) / letters);
}
