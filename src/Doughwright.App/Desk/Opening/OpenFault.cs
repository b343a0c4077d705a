using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Opening;

/// <summary>Why a text was not taken at all: what is the case, and what to do.</summary>
internal sealed record OpenFault(string Message, string WayOut)
{
    /// <param name="kind">Key of the words.</param>
    public static OpenFault Of(string kind, Voice voice, params ReadOnlySpan<(string Name, object? Value)> arguments) =>
        new(voice.Say(kind + ".message", arguments), voice.Say(kind + ".wayOut", arguments));
}
