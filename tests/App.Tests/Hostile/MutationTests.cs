using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace Doughwright.App.Tests.Hostile;

/// <summary>Spoiled texts: findings or figures come of them, and never a fault of ours, a long wait or a number that is none.</summary>
public class MutationTests(ITestOutputHelper output)
{
    private const int Few = 20_000;
    private const int Many = 1_000_000;

    /// <summary>How many to try in the long test; "./check --long 5000" sets it.</summary>
    private const string CountVariable = "DOUGHWRIGHT_SPOILED_TEXTS";

    /// <summary>Of those that are understood one in so many is rehearsed, and one in so many goes as far as the page: a rehearsal takes as long as many readings.</summary>
    private static readonly (int Rehearsed, int Page) OfFew = (31, 499);
    private static readonly (int Rehearsed, int Page) OfMany = (13, 499);

    /// <summary>Far more than any text takes; a text that hangs takes longer. On a busy machine the clock runs on while a text waits, so a slow one is tried once more.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    [Fact]
    [Trait("Category", "Slow")]
    public void TwentyThousandSpoiledTexts_DoNoHarm() => Run(Few, OfFew);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void AMillionSpoiledTexts_DoNoHarm() => Run(
        Environment.GetEnvironmentVariable(CountVariable) is { Length: > 0 } asked ? int.Parse(asked, NumberStyles.None, CultureInfo.InvariantCulture) : Many, OfMany);

    [Fact]
    public void ASpoiledText_IsTheSameForTheSameNumber() =>
        Assert.All(Enumerable.Range(0, 200), number => Assert.Equal(Mutations.Text(number), Mutations.Text(number)));

    private void Run(int count, (int Rehearsed, int Page) oneIn)
    {
        var broken = new ConcurrentBag<(int Number, string Why)>();
        var reached = new int[Enum.GetValues<Reached>().Length];
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, number =>
        {
            var depth = number % oneIn.Page == 0 ? Reached.Page : number % oneIn.Rehearsed == 0 ? Reached.Rehearsal : Reached.Formula;
            try
            {
                var text = Mutations.Text(number);
                if (Took(text, depth, out var came) > Patience && Took(text, depth, out _) is { } again && again > Patience)
                {
                    broken.Add((number, $"took {again}, twice"));
                }

                Interlocked.Increment(ref reached[(int)came]);
            }
            catch (Exception fault)
            {
                broken.Add((number, Where(fault)));
            }
        });
        var from = (Reached least) => reached.Skip((int)least).Sum();
        output.WriteLine(
            $"{count} texts: {from(Reached.Formula)} understood, {from(Reached.Rehearsal)} rehearsed, {from(Reached.Page)} brought to a page, {broken.Count} broken.");
        var told = broken.GroupBy(one => one.Why).Select(group => $"{group.Count()} times, first of text {group.Min(one => one.Number)}: {group.Key}");
        Assert.True(broken.IsEmpty, string.Join('\n', told.Take(40)));
        Assert.True(from(Reached.Formula) > count / 20 && from(Reached.Rehearsal) > 0, "Hardly a text was understood, so hardly anything was tried.");
    }

    private static TimeSpan Took(string text, Reached depth, out Reached came)
    {
        var clock = Stopwatch.StartNew();
        came = SpoiledText.Try(text, depth);
        return clock.Elapsed;
    }

    private static string Where(Exception fault)
    {
        var ours = fault.StackTrace?.Split('\n').FirstOrDefault(line => line.Contains("Doughwright", StringComparison.Ordinal) && !line.Contains("Tests", StringComparison.Ordinal));
        return $"{fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")} {ours?.Trim()}";
    }
}
