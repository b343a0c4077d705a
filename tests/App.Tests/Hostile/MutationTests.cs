using System.Collections.Concurrent;
using System.Diagnostics;
using Doughwright.App.Commands;
using Doughwright.App.Json;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Hostile;

/// <summary>Spoiled texts: findings or figures come of them, and never a fault of ours, a long wait or a number that is none.</summary>
public class MutationTests(ITestOutputHelper output)
{
    private const int Few = 20_000;
    private const int Many = 1_000_000;

    /// <summary>One in so many of the texts that can be rehearsed is; a rehearsal takes as long as a hundred readings.</summary>
    private const int RehearsedOfFew = 16;
    private const int RehearsedOfMany = 8;

    /// <summary>Far more than any text takes on a slow machine that is busy; a text that hangs takes longer.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    [Fact]
    [Trait("Category", "Slow")]
    public void TwentyThousandSpoiledTexts_DoNoHarm() => Run(Few, RehearsedOfFew);

    [Fact(Explicit = true)]
    [Trait("Category", "Long")]
    public void AMillionSpoiledTexts_DoNoHarm() => Run(Many, RehearsedOfMany);

    private void Run(int count, int oneIn)
    {
        var broken = new ConcurrentBag<(int Number, string Why)>();
        var (understood, rehearsed) = (0, 0);
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, number =>
        {
            var clock = Stopwatch.StartNew();
            try
            {
                switch (Try(Mutations.Text(number), number % oneIn == 0))
                {
                    case Reached.Formula:
                        Interlocked.Increment(ref understood);
                        break;
                    case Reached.Rehearsal:
                        Interlocked.Increment(ref understood);
                        Interlocked.Increment(ref rehearsed);
                        break;
                }
            }
            catch (Exception fault)
            {
                broken.Add((number, $"{fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")}{fault.StackTrace?.Split('\n').Skip(1).FirstOrDefault(line => line.Contains("Doughwright", StringComparison.Ordinal))?.Trim()}"));
            }

            if (clock.Elapsed > Patience)
            {
                broken.Add((number, $"took {clock.Elapsed}"));
            }
        });
        output.WriteLine($"{count} texts: {understood} understood, {rehearsed} rehearsed, {broken.Count} broken.");
        var told = broken.GroupBy(one => one.Why).Select(group => $"{group.Count()} times, first of text {group.Min(one => one.Number)}: {group.Key}");
        Assert.True(broken.IsEmpty, string.Join('\n', told.Take(40)));
        Assert.True(understood > count / 20 && rehearsed > 0, "Hardly a text was understood, so hardly anything was tried.");
    }

    private enum Reached
    {
        Text,
        Formula,
        Rehearsal,
    }

    /// <summary>What the commands do, without the command line. The writer of JSON throws at every number that is none.</summary>
    private static Reached Try(string text, bool rehearse)
    {
        var reading = RecipeText.Read(text);
        if (!reading.Understood || reading.Recipe is not { } recipe)
        {
            Holds(FindingsJson.WriteNotUnderstood(reading.Findings, Voice));
            return Reached.Text;
        }

        Assert.True(RecipeText.Read(RecipeText.Write(recipe)).Understood, "The canonical text is not understood.");
        var formula = Formula.Balance(recipe, Larder.Shipped);
        var found = FindingList.Of(text, reading.Findings, RecipeChecks.Of(recipe), formula.Findings);
        Holds(FormulaJson.Write(Stamp.Of(recipe), formula, found, Voice));
        if (!rehearse)
        {
            return Reached.Formula;
        }

        var rehearsal = Rehearser.Rehearse(formula, Larder.Shipped, Request.Home, lanes: 4);
        IReadOnlyList<Finding> all = FindingList.Of(text, found, rehearsal.Findings);
        Holds(RehearsalJson.Write(Stamp.Of(recipe), rehearsal, all, Voice));
        return Reached.Rehearsal;
    }

    private static void Holds(string json) => Assert.True(json.Length > 2);
}
