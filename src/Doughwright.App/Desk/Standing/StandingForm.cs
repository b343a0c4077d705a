using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Standing;

/// <summary>What an author says of a recipe beside its text, as it is typed.</summary>
internal sealed record StandingForm(string Standing, string Baked, string Family, string Season)
{
    public const string StandingName = "standing";
    public const string BakedName = "baked";
    public const string FamilyName = "family";
    public const string SeasonName = "season";

    /// <summary>Letters of a family or a season that still reads as one.</summary>
    public const int Longest = 40;

    public static StandingForm Of(IFormCollection form) => new(
        form[StandingName].ToString(), form[BakedName].ToString().Trim(), OneLine(form[FamilyName].ToString()), OneLine(form[SeasonName].ToString()));

    public static StandingForm Of(IReadOnlyDictionary<Saying, string>? said) => Of(what => said?.GetValueOrDefault(what) ?? "");

    /// <summary>What was shown to the person who typed; what a form does not tell was shown as it is now.</summary>
    public static StandingForm ShownOf(IFormCollection form, StandingForm now) =>
        Of(what => form.TryGetValue(HiddenName(what), out var shown) ? shown.ToString() : now[what]);

    public string this[Saying what] => what switch
    {
        Saying.Standing => Standing,
        Saying.Baked => Baked,
        Saying.Family => Family,
        _ => Season,
    };

    /// <summary>Fields that nobody sees: with what was shown, a field that was left alone is told from one that was typed in.</summary>
    public IReadOnlyList<(string Name, string Value)> Hidden => [.. Enum.GetValues<Saying>().Select(what => (HiddenName(what), this[what]))];

    /// <summary>What stands in the fields when something was refused: what was typed, and where nothing was, what is said now.</summary>
    public StandingForm Again(StandingForm shown, StandingForm now) => Of(what => this[what] == shown[what] ? now[what] : this[what]);

    /// <summary>What the next form starts from: where nothing was typed, or what was said meanwhile was told, what is said now.</summary>
    public StandingForm ShownNext(StandingForm shown, StandingForm now, IReadOnlyList<(Saying What, string Now)> meanwhile) =>
        Of(what => meanwhile.Any(other => other.What == what) ? meanwhile.First(other => other.What == what).Now : this[what] == shown[what] ? now[what] : shown[what]);

    /// <summary>Says what is new of it; nothing with a fault.</summary>
    /// <param name="shown">What was shown to the person who typed.</param>
    /// <param name="today">No bake lies after it.</param>
    /// <returns>What was said otherwise meanwhile; a fault tells of each.</returns>
    public IReadOnlyList<(Saying What, string Now)> Say(ShelfFolder shelf, string recipe, StandingForm shown, DateOnly today, Faults faults)
    {
        if (Standing.Length > 0 && !Standings.All.Contains(Standing, StringComparer.Ordinal))
        {
            faults.Add("standing-unknown", ("given", Standing), ("known", faults.Voice.List([.. Standings.All.Select(known => Standings.Name(known, faults.Voice))])));
        }

        if (Baked.Length > 0 && Standings.Day(Baked) is null)
        {
            faults.Add("baked-no-day", ("given", Baked));
        }
        else if (Standings.Day(Baked) > today)
        {
            faults.Add("baked-ahead", ("day", ClockWords.Date(Standings.Day(Baked)!.Value, faults.Voice)));
        }

        foreach (var typed in new[] { Family, Season }.Where(typed => typed.Length > Longest))
        {
            faults.Add("standing-long", ("letters", typed.Length), ("most", Longest));
        }

        if (faults.Any)
        {
            return [];
        }

        SaidAnew[] anew = [.. Enum.GetValues<Saying>().Where(what => this[what] != shown[what]).Select(what => new SaidAnew(what, shown[what], this[what]))];
        if (shelf.Book.Said.Say(PaperSort.Recipe, recipe, anew) is not { } meanwhile)
        {
            faults.Add("standing-gone", ("name", recipe));
            return [];
        }

        foreach (var (what, now) in meanwhile)
        {
            faults.Add(
                "standing-meanwhile",
                ("what", faults.Voice.Words["standing.what." + what.ToString().ToLowerInvariant()]), ("now", Spoken(what, now, faults.Voice)), ("typed", Spoken(what, this[what], faults.Voice)));
        }

        return meanwhile;
    }

    private static StandingForm Of(Func<Saying, string> said) => new(said(Saying.Standing), said(Saying.Baked), said(Saying.Family), said(Saying.Season));

    private static string HiddenName(Saying what) => "shown-" + what.ToString().ToLowerInvariant();

    private static string Spoken(Saying what, string value, Voice voice) => what switch
    {
        _ when value.Length == 0 => voice.Words["standing.not-said"],
        Saying.Standing when Standings.All.Contains(value, StringComparer.Ordinal) => Standings.Name(value, voice),
        Saying.Baked when Standings.Day(value) is { } day => ClockWords.Date(day, voice),
        _ => value,
    };

    private static string OneLine(string typed) => string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
