using System.Diagnostics;
using System.Globalization;
using Doughwright.App.Commands;

namespace Doughwright.App.Tests.Hostile;

/// <summary>Spoiled texts: findings or figures come of them, and never a fault of ours, a long wait or a number that is none.</summary>
public class MutationTests(ITestOutputHelper output)
{
    /// <summary>As many as take about eight seconds of one core. "./check --long 20000" tries more.</summary>
    private const int Few = 20_000;
    private const int FewCommands = 64;
    private const int Many = 1_000_000;
    private const int TextsPerCommand = 200;

    /// <summary>How many to try in the long test; "./check --long 5000" sets it.</summary>
    private const string CountVariable = "DOUGHWRIGHT_SPOILED_TEXTS";

    /// <summary>One in so many is rehearsed if it is understood, and one in so many goes as far as the page: a page takes as long as many readings.</summary>
    private static readonly (int Rehearsed, int Page) OfFew = (13, 211);
    private static readonly (int Rehearsed, int Page) OfMany = (7, 101);

    /// <summary>Far more than any text takes. On a busy machine the clock runs on while a text waits, so a slow one is tried once more.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    /// <summary>After this nobody waits for an answer any more.</summary>
    private static readonly TimeSpan Silence = TimeSpan.FromSeconds(60);

    private static int Asked => Environment.GetEnvironmentVariable(CountVariable) is { Length: > 0 } asked ? int.Parse(asked, NumberStyles.None, CultureInfo.InvariantCulture) : Many;

    [Fact]
    [Trait("Category", "Slow")]
    public void ThousandsOfSpoiledTexts_DoNoHarm() => Texts(Few, OfFew);

    [Fact]
    [Trait("Category", "Slow")]
    public void SpoiledCommandLines_DoNoHarm() => Commands(FewCommands);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void AMillionSpoiledTexts_DoNoHarm() => Texts(Asked, OfMany);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void ThousandsOfSpoiledCommandLines_DoNoHarm() => Commands(Math.Max(FewCommands, Asked / TextsPerCommand));

    [Fact]
    public void ASpoiledText_IsTheSameForTheSameNumber() =>
        Assert.All(Enumerable.Range(0, 200), number => Assert.Equal(Mutations.Text(number), Mutations.Text(number)));

    /// <summary>The label of the mix looked for a free place up the whole height of such a picture.</summary>
    [Fact]
    public void APartOfManyTons_IsPrintedInTime()
    {
        var text = File.ReadAllText(House.PathTo("tests", "data", "corpus", "sound", "boiled-rings.yaml")).Replace("honey: 30 g", "honey: 999999999 g", StringComparison.Ordinal);
        Assert.InRange(Took(text, Reached.Page, out var came), TimeSpan.Zero, Patience);
        Assert.Equal(Reached.Page, came);
    }

    /// <summary>Texts of the million that once broke something: sourdough in next to no flour, a bake beyond all bakes.</summary>
    [Theory]
    [InlineData(1521)]
    [InlineData(14547)]
    [InlineData(603729)]
    [InlineData(813246)]
    public void WhatOnceBroke_DoesNoHarm(int number) => SpoiledText.Try(Mutations.Text(number), Reached.Page);

    [Fact]
    public void WhatHangs_IsNamed_AndHangsNothingElse()
    {
        using var never = new ManualResetEventSlim();
        var done = 0;
        var broken = new Watched(TimeSpan.FromMilliseconds(300)).Each(50, number =>
        {
            if (number == 7)
            {
                never.Wait(TestContext.Current.CancellationToken);
            }

            Assert.NotEqual(9, number);
            Interlocked.Increment(ref done);
        });
        never.Set();
        Assert.Equal([7, 9], broken.Select(one => one.Number));
        Assert.Contains("gave no answer", broken[0].Why, StringComparison.Ordinal);
        Assert.True(done >= 48);
    }

    private void Texts(int count, (int Rehearsed, int Page) oneIn)
    {
        var reached = new int[Enum.GetValues<Reached>().Length];
        var broken = new Watched(Silence).Each(count, number =>
        {
            var depth = number % oneIn.Page == 0 ? Reached.Page : number % oneIn.Rehearsed == 0 ? Reached.Rehearsal : Reached.Formula;
            var text = Mutations.Text(number);
            if (Took(text, depth, out var came) > Patience && Took(text, depth, out _) is var again && again > Patience)
            {
                throw new TimeoutException($"took {again}, twice");
            }

            Interlocked.Increment(ref reached[(int)came]);
        });
        var from = (Reached least) => reached.Skip((int)least).Sum();
        output.WriteLine(
            $"{count} texts: {from(Reached.Formula)} understood, {from(Reached.Rehearsal)} rehearsed, {from(Reached.Page)} brought to a page, {broken.Count} broken.");
        Tell(broken);
        Assert.True(from(Reached.Formula) > count / 20, "Hardly a text was understood, so hardly anything was tried.");
        Assert.True(from(Reached.Rehearsal) > count / (40 * oneIn.Rehearsed) && from(Reached.Page) > count / (40 * oneIn.Page), "Hardly a text was rehearsed or printed.");
        Assert.True(from(Reached.Page) > 0 || count < oneIn.Page * 20, "No text came to a page.");
    }

    private void Commands(int count)
    {
        var folder = Directory.CreateTempSubdirectory("spoiled-");
        var codes = new int[ExitCode.NotUnderstood + 1];
        var broken = new Watched(Silence).Each(count, number => Interlocked.Increment(ref codes[SpoiledCommand.Of(number).Try(folder.FullName)]));
        folder.Delete(recursive: true);
        output.WriteLine($"{count} command lines: {codes[0] + codes[1]} done, {codes[2]} refused, {codes[3]} with a text that was not understood, {broken.Count} broken.");
        Tell(broken);
        Assert.True(codes[0] + codes[1] > count / 5 && codes[2] > count / 20, "Hardly a command line was carried out, or hardly one was refused.");
    }

    private static void Tell(IReadOnlyList<(int Number, string Why)> broken)
    {
        var told = broken.GroupBy(one => one.Why).Select(group => $"{group.Count()} times, first of number {group.Min(one => one.Number)}: {group.Key}");
        Assert.True(broken.Count == 0, string.Join('\n', told.Take(40)));
    }

    private static TimeSpan Took(string text, Reached depth, out Reached came)
    {
        var clock = Stopwatch.StartNew();
        came = SpoiledText.Try(text, depth);
        return clock.Elapsed;
    }
}
