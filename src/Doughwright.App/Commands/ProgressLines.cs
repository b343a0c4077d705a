using System.Diagnostics;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>Says how far a long command is, once it takes longer than a second, and then no more often than that.</summary>
/// <param name="words">Key of the sentence, with {done} and {all}.</param>
internal sealed class ProgressLines(TextWriter messages, Voice voice, string words, int all)
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);

    private long last = Stopwatch.GetTimestamp();

    public void Done(int done)
    {
        if (done < all && Stopwatch.GetElapsedTime(last) >= Between)
        {
            last = Stopwatch.GetTimestamp();
            messages.WriteLine(voice.Say(words, ("done", done), ("all", all)));
            messages.Flush();
        }
    }
}
