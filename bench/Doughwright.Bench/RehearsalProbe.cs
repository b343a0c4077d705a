using BenchmarkDotNet.Attributes;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Bench;

/// <summary>
/// A rehearsal of the potato rolls with its 32 lanes, the author's anchors included. The peer is the same run with plain doubles, one lane
/// after another. Elsewhere is 17 °C, 1,200 m and a static oven, with a dough of 26 °C asked for.
/// </summary>
[BenchmarkCategory("rehearsal")]
public class RehearsalProbe
{
    [Params("home", "elsewhere")]
    public string Kitchen { get; set; } = "home";

    /// <summary>Long enough for the just-in-time compiler to have compiled everything for good, also on a machine that others use.</summary>
    [GlobalSetup]
    public void WarmUp()
    {
        for (var run = 0; run < 500; run++)
        {
            Widest();
        }
    }

    [Benchmark(Description = "rehearse, widest lanes")]
    public Rehearsal Widest() => Rehearse();

    [Benchmark(Baseline = true, Description = "rehearse, 1 lane at once")]
    public Rehearsal Plain() => Lanes.AtWidth(1, Rehearse);

    private Rehearsal Rehearse() =>
        Rehearser.Rehearse(PotatoRolls.Formula, Larder.Shipped, Kitchen == "home" ? Request.Home : PotatoRolls.Elsewhere);
}
