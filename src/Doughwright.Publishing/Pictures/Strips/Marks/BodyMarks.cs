using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>The dough: what was weighed, the gas over it, the cuts between the pieces, the steam it gives off.</summary>
internal static class BodyMarks
{
    /// <summary>Hairlines beyond this number would be all there is to see.</summary>
    private const int MostCuts = 23;

    /// <summary>Steam is drawn when at least so much of the dough goes off in the oven.</summary>
    private const double LeastLoss = 0.005;

    /// <summary>A layer that is thinner than its outline is not drawn.</summary>
    private const double LeastLayer = 0.5;

    /// <summary>Core and gas. The outline comes after the strands: <see cref="Outline"/>.</summary>
    public static void Draw(Canvas canvas, BodyShape shape, Plan plan)
    {
        var paint = canvas.PaintOf(shape.NoseStart, shape.End, shape.Warmth);
        var gas = From(paint, shape.MixEnd);
        canvas.Band("gas", gas, shape.Core, shape.Crust, shape.Joints);
        canvas.Band("gasdots", [new(shape.MixEnd, shape.End, $"url(#{canvas.Holes})")], shape.Core, shape.Crust, shape.Joints);
        canvas.Band("strand core", paint, _ => 0, shape.Core, shape.Joints);
        canvas.Curve("corel", shape.MixEnd, shape.End, shape.Core, shape.Joints);
        if (shape.CutAt is { } cut)
        {
            var cuts = Math.Min(plan.Rehearsal.Recipe.Make!.Pieces - 1, MostCuts);
            for (var i = 1; i <= cuts; i++)
            {
                canvas.Curve("cut", cut, shape.End, shape.Core, shape.Joints, share: (double)i / (cuts + 1));
            }
        }
    }

    /// <summary>What was put on after the last bake, over the piece. How warm it becomes there nobody has worked out.</summary>
    public static void Layer(Canvas canvas, BodyShape shape)
    {
        if (shape.BakedAt is { } baked && shape.Layer(shape.End) >= LeastLayer)
        {
            canvas.Band("strand", [new(baked, shape.End, Paint.None)], shape.Crust, shape.Top, shape.Joints);
        }
    }

    public static void Outline(Canvas canvas, BodyShape shape) =>
        canvas.Curve("outline", shape.NoseStart, shape.End, shape.Top, shape.Joints.Append(shape.MixStart).Append(shape.MixEnd), endHeight: 0);

    /// <summary>Three wisps over every bake in which the dough gets lighter.</summary>
    public static void Steam(Canvas canvas, BodyShape shape, Plan plan)
    {
        foreach (var bake in plan.OnBench.Where(step => step.Kind == StepKind.Bake && step.End is not null))
        {
            var (before, after) = (plan.Body!.Grams(bake.Start), plan.Body.Grams(bake.EndOrStart));
            if (before - after < LeastLoss * before)
            {
                continue;
            }

            var start = canvas.Frame.Time.Place(bake.Start);
            foreach (var (along, phase) in ((double, double)[])[(8, 0), (22, 0.9), (36, 1.8)])
            {
                canvas.Svg.Path("steam", Enumerable.Range(0, 8).Select(i =>
                {
                    var minute = canvas.Frame.Time.Minute(start + along);
                    return canvas.Frame.AtPlace(start + along + (4.5 * Math.Sin((i * 0.8) + phase)), shape.Top(minute) + 4 + (i * 3.4));
                }));
            }
        }
    }

    private static IReadOnlyList<Paint> From(IReadOnlyList<Paint> paints, double minute) =>
        [.. paints.Where(paint => paint.To > minute).Select(paint => paint with { From = Math.Max(paint.From, minute) })];
}
