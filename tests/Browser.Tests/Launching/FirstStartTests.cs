using System.Diagnostics;
using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Launching;

/// <summary>From the program's start to the first byte of the first page.</summary>
[Collection(nameof(Alone))]
public class FirstStartTests
{
    private const int Starts = 5;

    [Fact(Timeout = Visit.Patience)]
    public async Task FirstByte_ComesWithinFiveSeconds()
    {
        var took = new List<TimeSpan>();
        for (var start = 0; start < Starts; start++)
        {
            var watch = Stopwatch.StartNew();
            await using var desk = await RunningDesk.Open();
            using var client = new HttpClient();
            using var answer = await client.GetAsync(desk.Address, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
            took.Add(watch.Elapsed);
        }

        var median = took.Order().ElementAt(Starts / 2);
        Console.WriteLine($"start to first byte, not compiled beforehand: median {median.TotalMilliseconds:0} ms of {Starts}");
        Assert.InRange(median, TimeSpan.Zero, TimeSpan.FromSeconds(5));
    }
}
