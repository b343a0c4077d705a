using BenchmarkDotNet.Attributes;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

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

    private Rehearsal? kept;

    /// <summary>Long enough for the just-in-time compiler to have compiled everything for good, also on a machine that others use.</summary>
    [GlobalSetup]
    public void WarmUp()
    {
        for (var run = 0; run < 500; run++)
        {
            Widest();
        }

        kept = Rehearse();
        for (var run = 0; run < 500; run++)
        {
            Drawn();
        }
    }

    [Benchmark(Description = "rehearse, widest lanes")]
    public Rehearsal Widest() => Rehearse();

    [Benchmark(Baseline = true, Description = "rehearse, 1 lane at once")]
    public Rehearsal Plain() => Lanes.AtWidth(1, Rehearse);

    /// <summary>What the pictures of a page ask of a rehearsal that is there already.</summary>
    [Benchmark(Description = "its course and the heat of its mix")]
    public (Course, HeatBalance?) Drawn() => (kept!.Course(), kept.HeatOf("mix"));

    private Rehearsal Rehearse() =>
        Rehearser.Rehearse(PotatoRolls.Formula, Larder.Shipped, Kitchen == "home" ? Request.Home : PotatoRolls.Elsewhere);
}
