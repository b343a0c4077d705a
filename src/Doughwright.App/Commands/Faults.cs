using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>Everything wrong with one command line, collected so that it is all said at once.</summary>
/// <param name="naming">What an option such as "--air" is called where nobody types options; null leaves it as it is typed.</param>
internal sealed class Faults(Voice voice, Func<string, string>? naming = null)
{
    private const string Option = "option";

    /// <summary>Another option that a fault tells of.</summary>
    private const string Beside = "beside";

    private readonly List<Fault> all = [];

    public IReadOnlyList<Fault> All => all;

    public bool Any => all.Count > 0;

    public Voice Voice => voice;

    /// <param name="kind">Key of the words: message and way out.</param>
    public void Add(string kind, params ReadOnlySpan<(string Name, object? Value)> arguments)
    {
        var told = arguments.ToArray();
        for (var i = 0; i < told.Length; i++)
        {
            if (told[i] is (Option or Beside, string option))
            {
                told[i].Value = NameOf(option);
            }
        }

        Add(new Fault(voice.Say(kind + ".message", told), voice.Say(kind + ".wayOut", told)));
    }

    /// <summary>A fault in the value of an option, in the words that a recipe text gets for the same.</summary>
    public void AddOfOption(string option, string kind, params ReadOnlySpan<(string Name, object? Value)> arguments)
    {
        var message = voice.Say("in-option", (Option, NameOf(option)), ("message", voice.Say(kind + ".message", arguments)));
        Add(new Fault(message, voice.Say(kind + ".wayOut", arguments)));
    }

    /// <summary>A finding as a fault, in its own words.</summary>
    public void Add(Finding finding) => Add(new Fault(FindingWords.Message(finding, voice), FindingWords.WayOut(finding, voice)));

    /// <summary>Names something that is not there: says what there is, and which is nearest.</summary>
    public void AddUnknown(string kind, string given, IReadOnlyCollection<string> known, params ReadOnlySpan<(string Name, object? Value)> arguments)
    {
        var there = known.Count == 0 ? voice.Words["nothing"] : voice.List(known);
        var nearest = Nearest.Within(given, known) is { } near ? voice.Say("nearest", ("name", near)) : "";
        Add(kind, [("given", given), ("known", there), ("nearest", nearest), .. arguments]);
    }

    private string NameOf(string option) => naming is null ? option : naming(option);

    private void Add(Fault said)
    {
        if (!all.Contains(said))
        {
            all.Add(said);
        }
    }
}
