using System.Globalization;
using System.Text.RegularExpressions;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Readying;

/// <summary>What an address asks of an hour: names and values are those of the options of "ready", read by the same code.</summary>
/// <param name="Read">The kitchen and the rest of the question.</param>
/// <param name="Hours">Null when they are not said, or refused.</param>
/// <param name="Form">With what was typed.</param>
/// <param name="Refused">What is wrong with the hours.</param>
/// <param name="Refusals">What else of the address is not used.</param>
/// <param name="LeavesDough">Whether the address keeps a dough as warm as at home: here its warmth is what is looked for.</param>
internal sealed partial record ReadyAsk(
    Understood Read, ReadyHours? Hours, ReadyForm Form, IReadOnlyList<Fault> Refused, IReadOnlyList<Refusal> Refusals, bool LeavesDough)
{
    public const string Start = "start";
    public const string ByName = "by";

    /// <summary>The field for the day; in an address it stands behind the hour.</summary>
    public const string LaterName = "later";

    /// <summary>Hours in the fields of a page that is not asked yet: the night that most people mean.</summary>
    public const string UsualStart = "22:00";
    public const string UsualBy = "7:00";

    /// <summary>The fields of the sentence.</summary>
    public static IReadOnlyList<string> Own { get; } = [Start, ByName, LaterName];

    /// <summary>The same on the command line.</summary>
    public required string CommandLine { get; init; }

    public static string PathOf(string recipe) => $"/recipes/{Uri.EscapeDataString(recipe)}/ready";

    /// <summary>
    /// The query as the command line would have it, from what a person types and chooses: "7" is 7:00, a day later stands behind the hour, and a start that
    /// is not said is the one shown. Null where it is so already.
    /// </summary>
    public static string? Completed(string query)
    {
        var question = Question.Of(query);
        var chosen = int.TryParse(question.First(LaterName), NumberStyles.None, CultureInfo.InvariantCulture, out var late) ? late : 0;
        var whole = question.Only(question.Items.Where(item => item.Name != LaterName).Select(item => item.Name switch
        {
            Start => item with { Value = Clock(item.Value) },
            ByName => item with { Value = Parted(item.Value) is (var clock, { } days) ? Behind(Clock(clock), days) : Behind(Clock(item.Value), chosen) },
            _ => item,
        }));
        if (whole.Has(ByName) && !whole.Has(Start))
        {
            whole = whole.With(Start, UsualStart);
        }

        return whole.Equals(question) ? null : whole.Query();
    }

    /// <summary>"7:00+1d" in its hour and its days; days are null where none are said, or what is said is no number of days. A plus may come as a blank.</summary>
    public static (string Clock, int? Days) Parted(string by) => WithDays().Match(by) is { Success: true } match
        ? (match.Groups[1].Value, int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture))
        : (by, null);

    /// <param name="file">With a recipe.</param>
    public static ReadyAsk Of(string query, RecipeFile file, ShelfFolder shelf, Voice voice)
    {
        var all = Question.Of(query);
        var (options, faults) = (new Options(), new Faults(voice, option => voice.Words.Find("readying.field." + option.TrimStart('-')) ?? option));
        var own = all.Only(all.Items.Where(item => item.Name is Start or ByName));
        var hours = all.Has(ByName)
            ? ReadyHours.Read(new Given(options.Parse([options.Ready.Name, "recipe", .. own.Items.Select(item => item.Argument)]), faults), options)
            : null;
        var read = new QuestionReader(file.Recipe!, file.Name, shelf, voice.Words).Read(all.Without([ByName, LaterName, .. Keeping.Names]), voice.Measures);
        var asked = hours is null ? read.Accepted.Without(Start) : read.Accepted.With(Start, all.First(Start));
        return new(
            read,
            faults.Any ? null : hours,
            ReadyForm.Of(file.Name, all.First(Start), all.First(ByName), all, voice) with
            {
                StartRefused = faults.Any && !IsClock(all.First(Start)),
                ByRefused = faults.Any && !IsClock(Parted(all.First(ByName) ?? "").Clock),
            },
            faults.All,
            // What is wrong with the start is told with the hours.
            [.. read.Refusals.Where(refusal => refusal.Option != Start || !faults.Any)],
            Keeping.Names.Any(all.Has))
        {
            CommandLine = CommandLineText.Of(file.Name, asked.With(ByName, all.First(ByName)).Without(Question.AsWrittenName).Items, shelf, options.Ready.Name),
        };
    }

    private static bool IsClock(string? typed) => typed is not null && Hour().IsMatch(typed);

    private static string Behind(string clock, int days) => days > 0 && !clock.Contains('+', StringComparison.Ordinal) ? FormattableString.Invariant($"{clock}+{days}d") : clock;

    /// <summary>What stands on a clock as people write it; the rest as it is, to be refused.</summary>
    private static string Clock(string typed) => LooseHour().Match(typed.Trim()) is { Success: true } match
        ? $"{match.Groups[1].Value}:{(match.Groups[2].Success ? match.Groups[2].Value : "00")}"
        : typed.Trim();

    [GeneratedRegex(@"^\s*(.*?)\s*[+ ]\s*([0-9]{1,2})\s*d\s*$")]
    private static partial Regex WithDays();

    [GeneratedRegex("^([01]?[0-9]|2[0-3]):[0-5][0-9]$")]
    private static partial Regex Hour();

    [GeneratedRegex("^([0-9]{1,2})(?:[:.]([0-9]{2}))?$")]
    private static partial Regex LooseHour();
}
