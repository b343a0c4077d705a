using System.Diagnostics;
using System.Globalization;

namespace Doughwright.App.Tests.Book;

/// <summary>One run of the writing program that was ended by force, and what it had said until then.</summary>
internal sealed record EndedByForce(IReadOnlyList<Acknowledged> Told, TimeSpan Lived)
{
    private static readonly string Program = Path.Join(AppContext.BaseDirectory, "Doughwright.BookWriter.dll");

    /// <param name="after">How long it may go on after it said its first line.</param>
    /// <param name="until">Ends it as soon as it says this; null waits for the time alone.</param>
    public static EndedByForce Run(TimeSpan after, string? until, params string[] arguments)
    {
        using var writer = Process.Start(new ProcessStartInfo("dotnet", ["exec", Program, .. arguments]) { RedirectStandardOutput = true })!;
        var first = writer.StandardOutput.ReadLine();
        Assert.NotNull(first);
        var lived = Stopwatch.StartNew();
        List<Acknowledged> told = [];
        var reading = Task.Run(() =>
        {
            while (writer.StandardOutput.ReadLine() is { } line)
            {
                told.Add(Acknowledged.Read(line));
                if (line == until)
                {
                    break;
                }
            }
        });
        reading.Wait(after, TestContext.Current.CancellationToken);
        var took = lived.Elapsed;
        writer.Kill();
        writer.WaitForExit();
        reading.Wait(TestContext.Current.CancellationToken);
        return new(told, took);
    }

    /// <summary>A moment within a span, each as likely as another.</summary>
    public static TimeSpan Moment(Random random, TimeSpan span) => span * random.NextDouble();
}

/// <summary>A line of the writing program: something that the book told it to be done.</summary>
internal sealed record Acknowledged(string What, string Name, long Number, string Hash)
{
    public static Acknowledged Read(string line) => line.Split(' ') is [var what, var name, var number, var hash]
        ? new(what, name, long.Parse(number, CultureInfo.InvariantCulture), hash)
        : new(line, "", 0, "");
}
