using System.Globalization;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Shelf;

/// <summary>What the address of the shelf asks for. A value that cannot be used is refused with its reason, and the usual one holds.</summary>
/// <param name="Ready">Day and time here at which everything should be ready.</param>
/// <param name="TimeTyped">The time as it stands in its field.</param>
/// <param name="Kitchen">Name of a kitchen in the book; null is the own kitchen of each recipe.</param>
/// <param name="TimeRefused">Why the typed time is not used.</param>
/// <param name="Refused">Why other values are not used.</param>
internal sealed record ShelfAsked(DateTime Ready, string TimeTyped, string? Kitchen, string? TimeRefused, IReadOnlyList<string> Refused)
{
    public const string DayName = "day";
    public const string TimeName = "time";
    public const string KitchenName = "kitchen";

    private const string DayForm = "yyyy-MM-dd";
    private static readonly string[] TimeForms = ["H:mm", "HH:mm", "%H", "HH"];

    public DateOnly Day => DateOnly.FromDateTime(Ready);

    /// <param name="value">The value of a name in the address, or null.</param>
    /// <param name="kitchens">Names that there are.</param>
    /// <param name="fileOf">The name of a kitchen's file, however it is asked for; null when there is none.</param>
    public static ShelfAsked Read(Func<string, string?> value, ShelfClock clock, IReadOnlyList<string> kitchens, Func<string, string?> fileOf, Voice voice)
    {
        var usual = clock.UsualReady;
        var refused = new List<string>();
        var day = DateOnly.FromDateTime(usual);
        if (value(DayName) is { Length: > 0 } typedDay && !DateOnly.TryParseExact(typedDay, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
        {
            day = DateOnly.FromDateTime(usual);
            refused.Add(voice.Say("shelf.day-refused", ("given", typedDay), ("used", ClockWords.Date(day, voice))));
        }

        if (day.Year is < 1900 or > 9000)
        {
            refused.Add(voice.Say("shelf.day-refused", ("given", AddressOf(day)), ("used", ClockWords.Date(DateOnly.FromDateTime(usual), voice))));
            day = DateOnly.FromDateTime(usual);
        }

        var time = TimeOnly.FromDateTime(usual);
        string? timeRefused = null;
        var typed = value(TimeName)?.Trim();
        if (typed is { Length: > 0 } && !TimeOnly.TryParseExact(typed.Replace('.', ':'), TimeForms, CultureInfo.InvariantCulture, DateTimeStyles.None, out time))
        {
            time = TimeOnly.FromDateTime(usual);
            timeRefused = voice.Say("shelf.time-refused", ("given", typed), ("used", ClockWords.Time(time, voice)));
        }

        var named = value(KitchenName) is { Length: > 0 } given ? given : null;
        var kitchen = named is not null && fileOf(named) is { } file && kitchens.Contains(file, StringComparer.Ordinal) ? file : null;
        if (named is not null && kitchen is null)
        {
            refused.Add(voice.Say("shelf.kitchen-refused", ("given", named), ("known", kitchens.Count == 0 ? voice.Words["nothing"] : voice.List(kitchens))));
        }

        return new(day.ToDateTime(time), timeRefused is null ? ClockWords.Time(time, voice) : typed!, kitchen, timeRefused, refused);
    }

    /// <summary>What the address asks of time and kitchen, to be asked again.</summary>
    public static Dictionary<string, string?> Given(IQueryCollection query, string? measures) => new[] { DayName, TimeName, KitchenName }
        .Select(name => KeyValuePair.Create(name, query[name].FirstOrDefault()))
        .Append(KeyValuePair.Create(Asking.Question.Measures, measures))
        .Where(each => !string.IsNullOrEmpty(each.Value))
        .ToDictionary(StringComparer.Ordinal);

    /// <summary>A day as it stands in an address: "2026-11-28".</summary>
    public static string AddressOf(DateOnly day) => day.ToString(DayForm, CultureInfo.InvariantCulture);
}
