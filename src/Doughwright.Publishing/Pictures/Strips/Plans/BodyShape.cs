using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>The dough on the bench as heights over time: its core is what was weighed, what stands above it is gas.</summary>
internal sealed class BodyShape
{
    /// <summary>What goes straight in lies ready so long before the mix, in the units of the picture.</summary>
    private const double NoseLength = 22;

    /// <summary>By this share of the mix everything is in.</summary>
    private const double AllIn = 0.8;

    /// <summary>The dough is drawn on after the last step, in minutes.</summary>
    private const double DrawnOn = 7;

    private readonly Plan plan;
    private readonly Track body;
    private readonly double perGram;

    private BodyShape(Layout layout, Track body)
    {
        (plan, this.body, perGram) = (layout.Plan, body, layout.Frame.PerGram);
        var time = layout.Frame.Time;
        BakedAt = plan.OnBench.LastOrDefault(step => step.Kind == StepKind.Bake)?.End;
        MixStart = plan.Mix?.Start ?? body.Start;
        MixEnd = plan.Mix?.EndOrStart ?? body.Start;
        Entry = plan.Mix is { } mix ? (plan.EntryOf(mix)?.Mass.Grams ?? 0) * perGram : Core(body.Start);
        var nose = plan.Mix is not null && Entry > 0 ? NoseLength : 0;
        NoseStart = Math.Max(time.Shift(MixStart, -nose), time.Minute(layout.Frame.IsWide ? 1 : TallLayout.Top - 10));
        End = body.End + DrawnOn;
        Joints = [.. body.Joints, .. Enumerable.Range(1, 4 * (int)NoseLength).Select(i => NoseStart + ((MixStart - NoseStart) * i * i / (16 * NoseLength * NoseLength)))];
    }

    public double NoseStart { get; }

    public double MixStart { get; }

    public double MixEnd { get; }

    public double End { get; }

    /// <summary>Height of what goes straight in.</summary>
    public double Entry { get; }

    /// <summary>Minutes at which something may jump, and those in which the nose is round.</summary>
    public IReadOnlyList<double> Joints { get; }

    /// <summary>Null when there is no dough to draw.</summary>
    public static BodyShape? Of(Layout layout) => layout.Plan.Body is { } body ? new(layout, body) : null;

    /// <summary>Height of what was weighed.</summary>
    public double Core(double minute)
    {
        if (plan.Mix is not { } mix || minute >= MixEnd)
        {
            return (body.Grams(minute) * perGram) - Layer(minute);
        }

        var whole = body.Grams(mix.EndOrStart) * perGram;
        return minute >= MixStart
            ? Ease.Between(minute, MixStart, MixStart + ((MixEnd - MixStart) * AllIn), Entry, whole)
            : Entry * Math.Sqrt(Math.Max(0, 1 - Cube((MixStart - minute) / Math.Max(1e-9, MixStart - NoseStart))));
    }

    /// <summary>Height of the dough with its gas.</summary>
    public double Top(double minute) => minute < MixEnd
        ? Core(minute)
        : Crust(minute) + Layer(minute);

    /// <summary>Height of the dough with its gas, without what lies on it.</summary>
    public double Crust(double minute) => Core(minute) + (plan.DoughGrams * perGram * Math.Max(0, body.Swelling(minute) - 1));

    /// <summary>Height of what was put on after the last bake: icing has not been in the oven, so it is no part of what was.</summary>
    public double Layer(double minute) => BakedAt is { } baked && minute > baked ? Math.Max(0, body.Grams(minute) - body.Grams(baked)) * perGram : 0;

    /// <summary>When the last bake ends; null when nothing is baked.</summary>
    public double? BakedAt { get; }

    public Temperature? Warmth(double minute) => body.Warmth(minute);

    /// <summary>When the dough is cut into pieces; null when it is not.</summary>
    public double? CutAt => plan.Rehearsal.Recipe.Make is { Pieces: > 1 } && plan.OnBench.FirstOrDefault(step => step.Kind == StepKind.Shape) is { } shape
        ? (shape.Start + shape.EndOrStart) / 2
        : null;

    private static double Cube(double value) => value * value * value;
}
