using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
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

    public static StandingForm Of(IReadOnlyDictionary<Saying, string>? said) => new(
        said?.GetValueOrDefault(Saying.Standing) ?? "",
        said?.GetValueOrDefault(Saying.Baked) ?? "",
        said?.GetValueOrDefault(Saying.Family) ?? "",
        said?.GetValueOrDefault(Saying.Season) ?? "");

    /// <summary>Says what is new of it; nothing with a fault.</summary>
    /// <param name="before">What was said until now.</param>
    /// <param name="today">No bake lies after it.</param>
    public bool Say(ShelfFolder shelf, string recipe, StandingForm before, DateOnly today, Faults faults)
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
            return false;
        }

        foreach (var (what, value, old) in new[]
        {
            (Saying.Standing, Standing, before.Standing),
            (Saying.Baked, Baked, before.Baked),
            (Saying.Family, Family, before.Family),
            (Saying.Season, Season, before.Season),
        }.Where(each => each.Item2 != each.Item3))
        {
            _ = shelf.Book.Said.Say(PaperSort.Recipe, recipe, what, value);
        }

        return true;
    }

    private static string OneLine(string typed) => string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
