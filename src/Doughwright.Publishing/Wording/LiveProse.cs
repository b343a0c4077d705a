using Doughwright.Engine.Baking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes.Live;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Publishing.Wording;

/// <summary>An author's prose with the values of a rehearsal where their names stand in brackets. What names nothing stays as it was typed.</summary>
internal static class LiveProse
{
    /// <summary>The prose in the words of a voice.</summary>
    /// <param name="step">Id of the step whose prose it is; null outside the steps.</param>
    public static string Of(string prose, string? step, Rehearsal here, Voice voice) =>
        string.Concat(Pieces(prose, step, here, voice).Select(piece => piece.Text));

    /// <summary>The prose in pieces, for a page that marks what it put in.</summary>
    public static IReadOnlyList<LivePiece> Pieces(string prose, string? step, Rehearsal here, Voice voice) =>
    [
        .. ProsePiece.Of(prose).Select(piece => piece.Name is { } words && LiveNames.Find(here.Recipe, words, step) is { } name
            ? new LivePiece(Read(name, here, voice), name)
            : new LivePiece(piece.Text, null)),
    ];

    /// <summary>What stands in the place of one name.</summary>
    public static string Read(LiveName name, Rehearsal here, Voice voice) => Said(LiveValue.Of(name, here), voice);

    /// <summary>A value as it stands in prose; words of their own where it is not known.</summary>
    public static string Said(object? value, Voice voice) => value switch
    {
        null => voice.Words["live.not-known"],
        Dial dial => voice.Dial(dial.Here),
        // Prose asks a person to measure, and nobody measures tenths.
        Temperature temperature => voice.Text(temperature, "asked"),
        _ => voice.Text(value),
    };
}

/// <summary>A run of prose as it is shown.</summary>
/// <param name="Name">What was put in; null for the author's own words.</param>
internal sealed record LivePiece(string Text, LiveName? Name);
