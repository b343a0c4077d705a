using Doughwright.App.Desk.Asking;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Readying;

/// <summary>"Work starts at 22:00, and it is to be ready at 7:00": what stands in the sentence and where it is sent.</summary>
/// <param name="Action">Address of the page that answers.</param>
/// <param name="Start">As typed.</param>
/// <param name="By">As typed, without its days.</param>
/// <param name="Later">The days that can be chosen.</param>
/// <param name="Carried">What the form carries on beside its own fields.</param>
public sealed record ReadyForm(string Action, string Start, string By, IReadOnlyList<ReadyLater> Later, IReadOnlyList<ReadyCarried> Carried)
{
    /// <summary>Days that can be chosen; more can be asked in the address.</summary>
    private const int MostChoices = 3;

    /// <summary>Whether what stands in a field cannot be used.</summary>
    public bool StartRefused { get; init; }

    public bool ByRefused { get; init; }

    /// <param name="recipe">Name of its file.</param>
    /// <param name="start">As typed; null for the usual hour.</param>
    /// <param name="by">As typed, "7:00+1d"; null for the usual hour.</param>
    /// <param name="question">The kitchen and the rest.</param>
    internal static ReadyForm Of(string recipe, string? start, string? by, Question question, Voice voice)
    {
        var (clock, days) = ReadyAsk.Parted(by ?? ReadyAsk.UsualBy);
        return new(
            ReadyAsk.PathOf(recipe),
            start ?? ReadyAsk.UsualStart,
            clock,
            [.. Enumerable.Range(0, Math.Max(MostChoices, days ?? 0) + 1).Select(late => new ReadyLater(late, NameOf(late, voice), late == (days ?? 0)))],
            [.. question.Without(ReadyAsk.Own).Items.Select(item => new ReadyCarried(item.Name, item.Value))]);
    }

    private static string NameOf(int late, Voice voice) => late switch
    {
        0 => voice.Words["readying.soonest"],
        1 => voice.Words["readying.day-later"],
        _ => voice.Say("readying.days-later", ("days", late)),
    };
}

/// <summary>So many days after the first such hour.</summary>
public sealed record ReadyLater(int Days, string Name, bool IsChosen);

/// <summary>A hidden field.</summary>
public sealed record ReadyCarried(string Name, string Value);
