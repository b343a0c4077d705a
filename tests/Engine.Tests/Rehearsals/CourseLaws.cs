using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>What holds for the course of every rehearsal.</summary>
internal static class CourseLaws
{
    private const double Kelvins = 0.05;

    public static void Hold(Rehearsal rehearsal)
    {
        var course = rehearsal.Course();
        foreach (var strand in course.Strands)
        {
            InOrder(strand);
            foreach (var stretch in strand.Stretches.Where(stretch => stretch.Step is not null))
            {
                AsTold(rehearsal.FindStep(stretch.Step!)!, stretch);
            }
        }

        EveryStepThatIsTimed_HasItsStretch(rehearsal, course);
        Joined(rehearsal, course);
        Assert.All(course.Rises, rise => Banded(rehearsal.FindStep(rise.Step)!, rise));
    }

    private static void InOrder(Strand strand)
    {
        for (var index = 0; index < strand.Stretches.Count; index++)
        {
            var stretch = strand.Stretches[index];
            Assert.True(stretch.Points.Count >= 2);
            Assert.Equal(stretch.Start.Minutes, stretch.Points[0].At.Minutes, 1e-9);
            Assert.Equal(stretch.End.Minutes, stretch.Points[^1].At.Minutes, 1e-6);
            Assert.All(stretch.Points.Zip(stretch.Points.Skip(1)), pair => Assert.True(pair.First.At <= pair.Second.At));
            Assert.All(stretch.Points, point => Assert.True(point.Mass > Mass.Zero && point.Volume is null or > 0.9 and < 20));
            if (index > 0)
            {
                Assert.Equal(strand.Stretches[index - 1].End.Minutes, stretch.Start.Minutes, 1e-9);
            }
        }
    }

    private static void AsTold(RehearsedStep step, Stretch stretch)
    {
        Assert.Equal(step.Start!.Value.Minutes, stretch.Start.Minutes, 1e-5);
        Assert.Equal(step.Time!.Value.Likely.Minutes, (stretch.End - stretch.Start).Minutes, 1e-6);
        // A bake is told by its core, and drawn by its mean, which is ahead of it; so is a loaf that cools.
        if (step is { StartTemperature: { } start, Cooling: null })
        {
            Assert.Equal(start.Celsius, stretch.Points[0].Temperature!.Value.Celsius, Kelvins);
        }

        if (step.EndTemperature is { } end)
        {
            var drawn = stretch.Points.First(point => point.At == stretch.Points[^1].At).Temperature!.Value;
            Assert.True(step.Kind == StepKind.Bake ? drawn > end : step.Cooling is not null ? drawn < end : Math.Abs((drawn - end).Kelvins) < Kelvins, $"{step.Id}: {drawn} for {end}");
        }

        if (step.Growth is { } growth && step.Kind is StepKind.Bulk or StepKind.Proof)
        {
            Assert.Equal(growth, stretch.Points[^1].Volume!.Value, 1e-6 * growth);
        }
    }

    private static void EveryStepThatIsTimed_HasItsStretch(Rehearsal rehearsal, Course course)
    {
        var timed = rehearsal.Steps.Where(step => !step.IsAdded && step.Kind != StepKind.Preheat && step.Start is not null && step.Time is not null);
        var drawn = course.Strands.SelectMany(strand => strand.Stretches).Select(stretch => stretch.Step).OfType<string>();
        Assert.Equal(timed.Select(step => step.Id).Order(), drawn.Order());
    }

    /// <summary>What a bowl holds is what came in with strands and straight, and what was in it before.</summary>
    private static void Joined(Rehearsal rehearsal, Course course)
    {
        foreach (var mix in rehearsal.Steps.Where(step => step.Kind == StepKind.Mix && step.Start is not null))
        {
            var strand = course.FindStrand(mix.Component)!;
            var at = strand.Stretches.ToList().FindIndex(stretch => stretch.Step == mix.Id);
            var inside = at > 0 ? strand.Stretches[at - 1].Points[^1].Mass.Grams : 0;
            var straight = course.Entries.Where(entry => entry.Step == mix.Id).Sum(entry => entry.Mass.Grams);
            var joining = course.Strands.Where(other => other.Joins == mix.Id && other.Into == mix.Component && other.Stretches.Count > 0);
            var sum = inside + straight + joining.Sum(other => other.Stretches[^1].Points[^1].Mass.Grams);
            Assert.Equal(strand.Stretches[at].Points[0].Mass.Grams, sum, 1e-6 * sum);
        }
    }

    private static void Banded(RehearsedStep step, RiseCurve rise)
    {
        Assert.All(rise.Likely.Zip(rise.Likely.Skip(1)), pair => Assert.True(pair.First.After <= pair.Second.After));
        Assert.All(rise.Reached.Zip(rise.Reached.Skip(1)), pair =>
        {
            Assert.True(pair.First.Growth < pair.Second.Growth);
            Assert.True(pair.First.After.Likely.Minutes <= pair.Second.After.Likely.Minutes + 1e-6);
            Assert.True(pair.First.After.Low.Minutes <= pair.Second.After.Low.Minutes + 1e-6);
            Assert.True(High(pair.First) <= High(pair.Second) + 1e-6);
        });
        if (rise.Target is { } target && step.Time is { } time)
        {
            var level = rise.Reached.Single(level => Math.Abs(level.Growth - target) < 1e-9);
            Assert.Equal(time, level.After);
            Assert.Equal(1.5 * time.Likely.Minutes, rise.Likely[^1].After.Minutes, 1e-6);

            // What takes more than four times as long as at home is followed in longer steps.
            var isLong = step.HomeTime is not { } home || time.Likely > 4 * home;
            Assert.Equal(target, Between(rise.Likely, time.Likely), (isLong ? 2e-2 : 1e-6) * target);
        }
    }

    private static double High(RiseLevel level) => level.After.High?.Minutes ?? double.PositiveInfinity;

    private static double Between(IReadOnlyList<RisePoint> curve, Duration at)
    {
        var after = curve.ToList().FindIndex(point => point.After >= at);
        var (from, to) = (curve[Math.Max(0, after - 1)], curve[after]);
        return from.Growth + ((at - from.After) / (to.After - from.After) * (to.Growth - from.Growth));
    }
}
