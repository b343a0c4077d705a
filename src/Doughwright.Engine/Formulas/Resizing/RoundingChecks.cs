using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>Where rounding is no longer small: lines that decide how wet a dough is, and pieces that are not what the dough comes to.</summary>
internal static class RoundingChecks
{
    /// <summary>Of a flour or water, in percent: as close as a household scale and hand are together. Common practice, no source.</summary>
    private const double Felt = 2;

    private static readonly Mass[] Scales = [Mass.FromGrams(1), Mass.FromGrams(0.5), Mass.FromGrams(0.1), Mass.FromGrams(0.01)];

    public static IEnumerable<Finding> Of(Resized resized) => [.. HydrationMoved(resized), .. PiecesApart(resized)];

    private static IEnumerable<Finding> HydrationMoved(Resized resized)
    {
        var shift = resized.After!.Percent.Hydration?.Value - resized.Before.Percent.Hydration?.Value;
        foreach (var line in resized.Lines.Where(line => line.Form != LineForm.Pieces && Math.Abs(line.ErrorPercent?.Value ?? 0) > Felt))
        {
            var component = resized.Before.FindComponent(line.Component);
            if (component is not { ShareInDough: > 0 } || component.Lines.FirstOrDefault(each => each.Id == line.Line) is not { Role: Role.Flour or Role.Water } written)
            {
                continue;
            }

            yield return Report.Make(
                "resize-rounding-felt",
                Grade.Warning,
                Report.PlaceOf(line.Component, line.Line),
                written.Source.Position,
                ("name", line.Name),
                ("scale", resized.ScaleShown),
                ("error", line.ErrorPercent!.Value),
                ("shift", shift is { } points ? Math.Round(points, 1, MidpointRounding.AwayFromZero) : ""),
                ("finer", Finer(line.Exact)));
        }
    }

    /// <summary>The coarsest scale whose whole step is not felt.</summary>
    private static Mass Finer(Mass exact)
    {
        var most = exact * (Felt / 100);
        return Array.Exists(Scales, scale => scale <= most) ? Scales.First(scale => scale <= most) : Scales[^1];
    }

    /// <summary>Pieces times their weight against the dough. What the balance tells already is not told again.</summary>
    private static IEnumerable<Finding> PiecesApart(Resized resized)
    {
        if (resized.Recipe!.Make is not { Pieces: > 0, PieceMass.Grams: > 0 } make || resized.After!.Dough <= Mass.Zero || IsTold(resized))
        {
            yield break;
        }

        var step = Mass.FromGrams(Math.Max(resized.Scale.Grams, 1));
        var each = resized.After.Dough / make.Pieces;
        if (Math.Abs((each - make.PieceMass).Grams) > step.Grams)
        {
            var asked = make.PieceMass * make.Pieces;
            yield return Report.Make(
                "resize-make-off",
                Grade.Hint,
                "make",
                Position.None,
                ("dough", resized.After.Dough),
                ("pieces", make.Pieces),
                ("piece", make.PieceMass),
                ("asked", asked),
                ("difference", resized.After.Dough - asked),
                ("each", each));
        }
    }

    private static bool IsTold(Resized resized)
    {
        var known = resized.Before.Findings.Select(finding => finding.Id).ToHashSet();
        return resized.After!.Findings.Any(finding => finding.Kind == "make-differs" && !known.Contains(finding.Id));
    }
}
