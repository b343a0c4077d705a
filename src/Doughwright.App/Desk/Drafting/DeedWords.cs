using Doughwright.App.Desk.Drafting.Views;
using Doughwright.Engine.Editing;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What was done, in words: "butter 50 g to 60 g".</summary>
internal static class DeedWords
{
    public static string Of(Deed deed, Voice voice) => voice.Fill(
        voice.Words["did." + deed.Kind],
        deed.Kind.StartsWith("step-", StringComparison.Ordinal) || deed.Kind.StartsWith("variant-", StringComparison.Ordinal)
            ? name => OfAStep(deed, name, voice)
            : deed.Arguments.GetValueOrDefault);

    /// <summary>What a step says is kept by the keys and words of the text; a person reads the words of the sheet.</summary>
    private static object? OfAStep(Deed deed, string name, Voice voice) => (name, deed.Arguments.GetValueOrDefault(name), deed.Arguments.GetValueOrDefault("what")) switch
    {
        ("what", string key, _) => Capital.Small(voice.Words["write.step." + key]),
        ("to" or "from", string said, string key) => ChoiceWords.Of(key, said, voice),
        (_, var other, _) => other,
    };
}
