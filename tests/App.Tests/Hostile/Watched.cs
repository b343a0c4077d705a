using System.Collections.Concurrent;
using System.Diagnostics;

namespace Doughwright.App.Tests.Hostile;

/// <summary>
/// Does a piece of work for every number, on two threads, and watches them: one that gives no answer is named and left behind, so that it hangs
/// neither the others nor the run.
/// </summary>
internal sealed class Watched(TimeSpan patience)
{
    private const int Workers = 2;
    private const int MostLeftBehind = 3;

    private readonly TimeSpan patience = patience;
    private readonly ConcurrentBag<(int Number, string Why)> broken = [];
    private int next = -1;

    /// <summary>What came to grief, with the reason; empty when all went well.</summary>
    public IReadOnlyList<(int Number, string Why)> Each(int count, Action<int> work)
    {
        var workers = Enumerable.Range(0, Workers).Select(_ => new Worker(this, count, work)).ToList();
        for (var left = 0; workers.Exists(worker => !worker.IsDone);)
        {
            Thread.Sleep(20);
            foreach (var hung in workers.Where(worker => worker.At is var (number, since) && Stopwatch.GetElapsedTime(since) > patience && worker.Leave(number)).ToList())
            {
                workers.Remove(hung);
                if (++left < MostLeftBehind)
                {
                    workers.Add(new(this, count, work));
                }
            }
        }

        if (broken.Count(one => one.Why.StartsWith(Silence, StringComparison.Ordinal)) == MostLeftBehind)
        {
            broken.Add((next, "so many gave no answer that the rest was not tried"));
        }

        return [.. broken.OrderBy(one => one.Number)];
    }

    private const string Silence = "gave no answer within";

    private static string Where(Exception fault)
    {
        var ours = fault.StackTrace?.Split('\n').FirstOrDefault(line => line.Contains("Doughwright", StringComparison.Ordinal) && !line.Contains("Tests", StringComparison.Ordinal));
        return $"{fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")} {ours?.Trim()}";
    }

    private sealed class Worker
    {
        private readonly Lock gate = new();
        private readonly Watched watched;
        private (int Number, long Since)? at;
        private volatile bool isLeft;

        public Worker(Watched watched, int count, Action<int> work)
        {
            this.watched = watched;
            new Thread(() => Go(count, work), 16 * 1024 * 1024) { IsBackground = true }.Start();
        }

        public volatile bool IsDone;

        public (int Number, long Since)? At
        {
            get
            {
                lock (gate)
                {
                    return at;
                }
            }
        }

        /// <summary>False when it has come back meanwhile.</summary>
        public bool Leave(int number)
        {
            lock (gate)
            {
                isLeft = at?.Number == number;
            }

            if (isLeft)
            {
                watched.broken.Add((number, $"{Silence} {watched.patience.TotalSeconds:0} s"));
            }

            return isLeft;
        }

        private void Go(int count, Action<int> work)
        {
            while (!isLeft && Interlocked.Increment(ref watched.next) is var number && number < count && Take(number))
            {
                try
                {
                    work(number);
                }
                catch (Exception fault)
                {
                    watched.broken.Add((number, Where(fault)));
                }
            }

            lock (gate)
            {
                at = null;
            }

            IsDone = true;
        }

        private bool Take(int number)
        {
            lock (gate)
            {
                at = (number, Stopwatch.GetTimestamp());
                return !isLeft;
            }
        }
    }
}
