using Doughwright.Engine.Baking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>Live values in an author's prose, in both systems of measures: "[bulk time]", "[oven]".</summary>
internal static class LiveValues
{
    /// <summary>Puts the values of a rehearsal where their names stand. What names nothing stays as it is.</summary>
    /// <param name="step">Id of the step whose prose it is; null outside the steps.</param>
    public static Func<string, string> Of(Rehearsal here, Both both, string? step = null) => words =>
        string.Concat(LiveProse.Pieces(words, step, here, both.Voice).Select(piece => piece.Name is { } name
            ? Said(LiveValue.Of(name, here), both) ?? piece.Text
            : piece.Text));

    /// <summary>A value that has two measures in both; null for all others.</summary>
    public static string? Said(object? value, Both both) => value switch
    {
        Temperature temperature => both.Degrees(temperature),
        Mass mass => both.Weight(mass),
        Dial dial => both.Dial(dial),
        _ => null,
    };
}
