using Doughwright.Engine.Editing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What was done, in words: "butter 50 g to 60 g".</summary>
internal static class DeedWords
{
    public static string Of(Deed deed, Voice voice) => voice.Fill(voice.Words["did." + deed.Kind], deed.Arguments.GetValueOrDefault);
}
