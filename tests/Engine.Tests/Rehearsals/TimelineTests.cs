using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>One pair of hands, one oven, and nothing before its time.</summary>
public class TimelineTests
{
    private const double Hair = 1e-9;

    /// <summary>Work whose needs come before it in the list, some of it with hands, some in the oven.</summary>
    private static readonly Gen<Work[]> Any = Gen
        .Select(Gen.Double[1, 120], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[0, 9], Gen.Int[0, 1000], Gen.Int[0, 1000])
        .Array[1, 9]
        .Select(pieces => pieces.Select((piece, index) =>
        {
            var (minutes, offset, share, sort, first, second) = piece;
            var length = (1 - offset) * share * minutes;
            return new Work(
                minutes,
                index == 0 || sort > 7 ? [] : [.. new[] { first % index, second % index }.Distinct()],
                sort % 2 == 0 ? [(offset * minutes, length)] : [],
                sort % 4 == 1);
        }).ToArray());

    [Fact]
    public void Hands_NeverOverlap() => Any.Sample(work =>
    {
        var starts = Timeline.Lay(work);
        AssertApart(work.SelectMany((piece, index) => piece.Hands.Select(hands =>
            (From: starts[index] + hands.Offset, To: starts[index] + hands.Offset + hands.Minutes))));
    });

    [Fact]
    public void Oven_HoldsOneAtATime() => Any.Sample(work =>
    {
        var starts = Timeline.Lay(work);
        AssertApart(work.Select((piece, index) => (From: starts[index], To: starts[index] + piece.Minutes)).Where((_, index) => work[index].UsesOven));
    });

    [Fact]
    public void Nothing_StartsBeforeWhatItNeeds() => Any.Sample(work =>
    {
        var starts = Timeline.Lay(work);
        Assert.Equal(0, starts.Min(), Hair);
        for (var index = 0; index < work.Length; index++)
        {
            Assert.All(work[index].Before, before => Assert.True(starts[before] + work[before].Minutes <= starts[index] + Hair));
        }
    });

    [Fact]
    public void WithoutHandsAndOven_TheLongestWayIsTheTotal() => Any.Sample(work =>
    {
        var free = work.Select(piece => piece with { Hands = [], UsesOven = false }).ToArray();
        var starts = Timeline.Lay(free);
        var ends = new double[free.Length];
        for (var index = 0; index < free.Length; index++)
        {
            ends[index] = free[index].Minutes + free[index].Before.Select(before => ends[before]).DefaultIfEmpty(0).Max();
        }

        Assert.Equal(ends.Max(), free.Select((piece, index) => starts[index] + piece.Minutes).Max(), 1e-6);
    });

    /// <summary>The same work listed otherwise takes the same time in all.</summary>
    [Fact]
    public void OrderOfListing_LeavesTheTotal() => Gen.Select(Any, Gen.Int[0, int.MaxValue]).Sample((work, seed) =>
    {
        var order = Enumerable.Range(0, work.Length).ToArray();
        new Random(seed).Shuffle(order);
        var place = new int[order.Length];
        for (var index = 0; index < order.Length; index++)
        {
            place[order[index]] = index;
        }

        var shuffled = order.Select(old => work[old] with { Before = [.. work[old].Before.Select(before => place[before])] }).ToArray();
        Assert.Equal(Total(work), Total(shuffled), 1e-6);
    });

    [Fact]
    public void CoolingParts_EndWhenTheMixWantsThem()
    {
        var home = Rehearser.Rehearse(RecipeText.Read(Texts.PotatoRolls).Recipe!, Larder.Shipped);
        var mix = home.FindStep("mix")!.Start!.Value.Minutes;
        foreach (var part in new[] { "mash", "scald" })
        {
            var step = home.FindStep(part)!;
            Assert.Equal(mix, step.Start!.Value.Minutes + step.Time!.Value.Likely.Minutes, 1e-9);
        }

        var preheat = home.FindStep("preheat")!;
        Assert.Equal(home.FindStep("bake")!.Start!.Value.Minutes, preheat.Start!.Value.Minutes + preheat.Time!.Value.Likely.Minutes, 1e-9);
    }

    private static double Total(Work[] work)
    {
        var starts = Timeline.Lay(work);
        return work.Select((piece, index) => starts[index] + piece.Minutes).Max();
    }

    private static void AssertApart(IEnumerable<(double From, double To)> stretches)
    {
        var sorted = stretches.Where(stretch => stretch.To > stretch.From + Hair).OrderBy(stretch => stretch.From).ToArray();
        Assert.All(sorted.Zip(sorted.Skip(1)), pair => Assert.True(pair.First.To <= pair.Second.From + 1e-6, $"{pair}"));
    }
}
