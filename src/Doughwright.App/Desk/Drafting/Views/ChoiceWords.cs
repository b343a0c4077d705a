using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>Words of the text form as they read in a sentence: "fridge" under "where" is "in the fridge".</summary>
internal static class ChoiceWords
{
    /// <summary>Where the words for a choice are found, by the key of a step that it stands under.</summary>
    private static readonly Dictionary<string, string> Lists = new(StringComparer.Ordinal)
    {
        ["kind"] = "step-kind",
        ["where"] = "where",
        ["way"] = "mixing-way",
        ["cover"] = "cover",
        ["on"] = "baked-on",
    };

    /// <param name="raw">As a text writes it.</param>
    public static string OfPart(string raw, Voice voice) => voice.Words["component-kind." + Slug.Of(raw)];

    /// <param name="raw">As a text writes it; what is written freely is its own word.</param>
    public static string Of(string key, string raw, Voice voice) => raw.Length > 0 && Lists.TryGetValue(key, out var list) ? voice.Words[$"{list}.{Slug.Of(raw)}"] : raw;
}
