using System.Globalization;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Standing;

/// <summary>How recipes stand, in the author's own words: an idea, being tried, come out right, published; and when each was last baked.</summary>
internal static class Standings
{
    /// <summary>Readers have it.</summary>
    public const string Published = "published";

    /// <summary>In the order that a recipe goes through.</summary>
    public static readonly IReadOnlyList<string> All = ["idea", "trying", "right", Published];

    private const string DayForm = "yyyy-MM-dd";

    public static string Name(string standing, Voice voice) => voice.Words["standing." + standing];

    /// <summary>"Trying; last baked Saturday 7 November."; null when nothing is said.</summary>
    public static string? Words(IReadOnlyDictionary<Saying, string>? said, Voice voice)
    {
        var standing = said?.GetValueOrDefault(Saying.Standing);
        var baked = Day(said?.GetValueOrDefault(Saying.Baked));
        return (standing, baked) switch
        {
            (null, null) => null,
            ({ } named, null) => voice.Say("standing.alone", ("standing", Capital(Name(named, voice)))),
            (null, { } day) => voice.Say("standing.baked", ("day", ClockWords.Date(day, voice))),
            ({ } named, { } day) => voice.Say("standing.both", ("standing", Capital(Name(named, voice))), ("day", ClockWords.Date(day, voice))),
        };
    }

    /// <summary>A day as it is typed; null when it is none.</summary>
    public static DateOnly? Day(string? typed) =>
        DateOnly.TryParseExact(typed, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    public static string Typed(DateOnly day) => day.ToString(DayForm, CultureInfo.InvariantCulture);

    private static string Capital(string word) => word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..];
}
