using Doughwright.Engine.Remedies;

namespace Doughwright.Publishing.Wording;

/// <summary>A way out in words: "Add masher to the tools".</summary>
internal static class RemedyWords
{
    public static string Verb(Remedy remedy, Voice voice) => voice.Fill(voice.Words[$"remedy.{remedy.Verb}"], name => remedy.Arguments.GetValueOrDefault(name));
}
