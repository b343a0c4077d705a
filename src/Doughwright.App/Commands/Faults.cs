using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>Everything wrong with one command line, collected so that it is all said at once.</summary>
internal sealed class Faults(Voice voice)
{
    private readonly List<Fault> all = [];

    public IReadOnlyList<Fault> All => all;

    public bool Any => all.Count > 0;

    public Voice Voice => voice;

    /// <param name="kind">Key of the words: message and way out.</param>
    public void Add(string kind, params ReadOnlySpan<(string Name, object? Value)> arguments) =>
        Add(new Fault(voice.Say(kind + ".message", arguments), voice.Say(kind + ".wayOut", arguments)));

    /// <summary>A fault in the value of an option, in the words that a recipe text gets for the same.</summary>
    public void AddOfOption(string option, string kind, params ReadOnlySpan<(string Name, object? Value)> arguments)
    {
        var message = voice.Say("in-option", ("option", option), ("message", voice.Say(kind + ".message", arguments)));
        Add(new Fault(message, voice.Say(kind + ".wayOut", arguments)));
    }

    /// <summary>Names something that is not there: says what there is, and which is nearest.</summary>
    public void AddUnknown(string kind, string given, IReadOnlyCollection<string> known, params ReadOnlySpan<(string Name, object? Value)> arguments)
    {
        var there = known.Count == 0 ? voice.Words["nothing"] : voice.List(known);
        var nearest = Nearest.Within(given, known) is { } near ? voice.Say("nearest", ("name", near)) : "";
        Add(kind, [("given", given), ("known", there), ("nearest", nearest), .. arguments]);
    }

    private void Add(Fault said)
    {
        if (!all.Contains(said))
        {
            all.Add(said);
        }
    }
}
