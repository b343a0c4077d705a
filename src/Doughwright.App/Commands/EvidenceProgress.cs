using System.Diagnostics;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>Says how far a run of cases is, once it takes longer than a second, and then no more often than that.</summary>
internal sealed class EvidenceProgress(TextWriter messages, Voice voice, int all)
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);

    private long last = Stopwatch.GetTimestamp();

    public void Done(int cases)
    {
        if (cases < all && Stopwatch.GetElapsedTime(last) >= Between)
        {
            last = Stopwatch.GetTimestamp();
            messages.WriteLine(voice.Say("evidence-progress", ("done", cases), ("all", all)));
            messages.Flush();
        }
    }
}
