using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>Live values in an author's prose: "[bulk time]".</summary>
internal static class LiveValues
{
    /// <summary>Puts the values of a rehearsal where their names stand. What names nothing stays as it is.</summary>
    public static Func<string, string> Of(Rehearsal here, Voice voice) => words => LiveProse.Of(words, null, here, voice);
}
