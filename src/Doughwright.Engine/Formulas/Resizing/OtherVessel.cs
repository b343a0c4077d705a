using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>
/// The factor of another tin, another tray, another number of trays. How full a tin is to be is nowhere known but from the tin that the recipe
/// was made in, so without one it is refused.
/// </summary>
internal static class OtherVessel
{
    public static SizeAsked Tin(Recipe recipe, VesselSize size, VesselSize? own)
    {
        own ??= OwnSize(recipe, VesselShape.Tin);
        if (own?.Volume is not { Litres: > 0 } old)
        {
            return Refused(recipe, VesselShape.Tin);
        }

        if (size.Volume is not { } now)
        {
            return SizeAsked.Refuse(Report.Make("resize-tin-without-depth", Grade.Error, "", Position.None));
        }

        // One piece stays one piece, only larger; the tins do not become more.
        var factor = now / old;
        return new(factor, recipe.Make is { } make ? [make with { PieceMass = make.PieceMass * factor }] : [], null);
    }

    public static SizeAsked Tray(Recipe recipe, VesselSize size, VesselSize? own)
    {
        own ??= OwnSize(recipe, VesselShape.Tray);
        if (own?.Floor is not > 0)
        {
            return Refused(recipe, VesselShape.Tray);
        }

        if (size.Floor is not { } now)
        {
            return SizeAsked.Refuse(Report.Make("resize-tray-without-floor", Grade.Error, "", Position.None));
        }

        var factor = now / own.Floor.Value;
        // One sheet stays one sheet; pieces keep their weight, and more of them lie there.
        return recipe.Make is { Pieces: 1 } sheet ? new(factor, [sheet with { PieceMass = sheet.PieceMass * factor }], null) : SizeAsked.Scaled(recipe.Make, factor);
    }

    public static SizeAsked Trays(Recipe recipe, int count)
    {
        if (recipe.Make is not { } make)
        {
            return SizeAsked.NoMake();
        }

        if (StepWithTrays(recipe) is not { Trays: { } trays })
        {
            return SizeAsked.Refuse(Report.Make("resize-trays-not-stated", Grade.Error, "steps", Position.None));
        }

        var pieces = (int)Math.Max(1, Math.Round((double)make.Pieces * count / trays, MidpointRounding.AwayFromZero));
        return new((double)pieces / make.Pieces, [make.With(pieces)], null);
    }

    /// <summary>The step that says how many trays are in use: the bake, or else any other.</summary>
    public static Step? StepWithTrays(Recipe recipe) => recipe.Steps.Where(step => step.Trays is > 0).OrderByDescending(step => step.Kind == StepKind.Bake).FirstOrDefault();

    private static VesselSize? OwnSize(Recipe recipe, VesselShape shape) =>
        recipe.Steps.Select(step => step.Vessel).FirstOrDefault(vessel => vessel?.Shape == shape && vessel.Size is not null)?.Size;

    private static SizeAsked Refused(Recipe recipe, VesselShape shape)
    {
        var step = recipe.Steps.FirstOrDefault(step => step.Vessel?.Shape == shape);
        return SizeAsked.Refuse(Report.Make(
            shape == VesselShape.Tin ? "resize-tin-not-stated" : "resize-tray-not-stated",
            Grade.Error,
            step is null ? "steps" : $"steps.{step.Id}",
            step?.Position ?? Position.None));
    }
}
