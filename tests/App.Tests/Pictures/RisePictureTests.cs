using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Rise;

namespace Doughwright.App.Tests.Pictures;

/// <summary>The comb stands where the time is; a proof is never told as growth.</summary>
public class RisePictureTests
{
    [Fact]
    public void Comb_SpansTheRange_AndTheDotIsTheLikelyTime_InEveryDemo()
    {
        var seen = 0;
        foreach (var (_, run) in DemoRuns.All)
        {
            foreach (var rise in run.Course().Rises)
            {
                var step = run.FindStep(rise.Step)!;
                if (step.Time is not { High: { } high } time || (rise.Target is null && step.Kind != StepKind.Proof))
                {
                    continue;
                }

                var drawn = new Drawn(RisePicture.Draw(rise, step, [], PictureSamples.Metric, "r"));
                var frame = RiseFrame.Of(rise, step, []);
                var bar = drawn.OfClass("combbar").Single();
                var dot = drawn.OfClass("dot").Single();
                Assert.Equal(frame.X(time.Low), Drawn.Value(bar, "x1"), 0.06);
                Assert.Equal(frame.X(high), Drawn.Value(bar, "x2"), 0.06);
                Assert.Equal(frame.X(time.Likely), Drawn.Value(dot, "cx"), 0.06);
                seen++;
            }
        }

        Assert.InRange(seen, 10, int.MaxValue);
    }

    /// <summary>The curve goes through the circle: the level of the cue is reached at the time that is printed.</summary>
    [Fact]
    public void Curve_PassesTheDot_WhereABulkEndsByGrowth()
    {
        foreach (var (name, run) in DemoRuns.All)
        {
            foreach (var rise in run.Course().Rises.Where(rise => rise.Target is not null))
            {
                var step = run.FindStep(rise.Step)!;
                if (step is { Kind: StepKind.Bulk, Time: { } time })
                {
                    Assert.True(Math.Abs(RiseFrame.GrowthAt(rise.Likely, time.Likely)!.Value - rise.Target!.Value) < 0.02, name);
                }
            }
        }
    }

    /// <summary>Where every place for the time is taken, it is handed back to stand below the picture.</summary>
    [Fact]
    public void TimeWithoutAPlace_IsNotDropped()
    {
        var run = DemoRuns.All.First(run => run.Run.Course().Rises.Any(rise => rise.Target is not null && run.Run.FindStep(rise.Step)!.Time is not null)).Run;
        var rise = run.Course().Rises.First(rise => rise.Target is not null && run.FindStep(rise.Step)!.Time is not null);
        var step = run.FindStep(rise.Step)!;
        var plan = new LabelPlan(RiseFrame.Width);
        plan.Take(Box.Of(-2000, -2000, 4000, 4000));
        var svg = new Svg();
        var below = RiseEnd.Draw(svg, plan, new(plan, [], []), rise, step, RiseFrame.Of(rise, step, []), PictureSamples.Metric);
        Assert.Contains(PictureSamples.Metric.Text(step.Time!.Value.Likely), below, StringComparison.Ordinal);
        var free = new LabelPlan(RiseFrame.Width);
        Assert.Null(RiseEnd.Draw(svg, free, new(free, [], []), rise, step, RiseFrame.Of(rise, step, []), PictureSamples.Metric));
    }

    [Fact]
    public void AFinalProof_NeverShowsGrowth()
    {
        var seen = 0;
        foreach (var (_, run) in DemoRuns.All)
        {
            foreach (var rise in run.Course().Rises)
            {
                if (run.FindStep(rise.Step) is { Kind: StepKind.Proof } step)
                {
                    var drawn = new Drawn(RisePicture.Draw(rise, step, [], PictureSamples.Metric, "r"));
                    Assert.Empty(drawn.OfClass("cueline"));
                    Assert.DoesNotContain(drawn.Texts.Append(drawn.Title).Append(drawn.Description), text => text.Contains('×', StringComparison.Ordinal));
                    seen++;
                }
            }
        }

        Assert.InRange(seen, 5, int.MaxValue);
    }

    [Theory]
    [InlineData(15, "0:05")]
    [InlineData(105, "0:30")]
    [InlineData(18 * 60, "6:00")]
    public void Axis_FollowsTheTime(double minutes, string second)
    {
        var drawn = new Drawn(RisePicture.Draw(PictureSamples.Rise(minutes, 2, 26, 21), PictureSamples.Step(StepKind.Bulk, minutes, null), [], PictureSamples.Metric, "r"));
        var times = drawn.Lines(phone: false).Where(line => line.Class == "hr" && line.Text.Contains(':', StringComparison.Ordinal)).Select(line => line.Text).ToList();
        Assert.Equal("0:00", times[0]);
        Assert.Equal(second, times[1]);
        Assert.EndsWith("\u00a0h", times[^1], StringComparison.Ordinal);
        Assert.InRange(times.Count, 3, 7);
    }

    [Fact]
    public void OpenRange_IsSaid_AndItsBandStaysOpen()
    {
        var drawn = new Drawn(RisePicture.Draw(PictureSamples.Rise(100, 2, 26, 21, open: true), PictureSamples.Step(StepKind.Bulk, 100, null, open: true), [], PictureSamples.Metric, "r"));
        Assert.Contains("from 1:28", drawn.Texts);
        Assert.Contains(" 466 ", drawn.OfClass("rband").Single().Attribute("d")!.Value.Replace('L', ' ').Replace('M', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatNeverEnds_HasNoComb_AndSaysSo()
    {
        var drawn = new Drawn(RisePicture.Draw(PictureSamples.Rise(200, 1.5, 8, 5) with { Target = 2 }, PictureSamples.Step(StepKind.Bulk, null, null), [], PictureSamples.Metric, "r"));
        Assert.Empty(drawn.OfClass("comb"));
        Assert.Empty(drawn.OfClass("dot"));
        Assert.Contains("does not get there", drawn.Texts);
        Assert.StartsWith("It does not get there", drawn.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Folds_AreNamed_AndToldWithTheirTimes()
    {
        var drawn = new Drawn(RisePicture.Draw(PictureSamples.Rise(130, 1.8, 26, 21), PictureSamples.Step(StepKind.Bulk, 130, null, false, 40, 80), [], PictureSamples.Metric, "r"));
        Assert.Equal(2, drawn.OfClass("notch").Count());
        Assert.Equal(2, drawn.Texts.Count(text => text == "fold"));
        Assert.Contains("40\u00a0min and 1\u00a0h 20\u00a0min", drawn.Description.Replace("h\u00a020", "h 20", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
