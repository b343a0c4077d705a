using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>How a dough lies in a step, from what its author wrote: the depth, the tin, the tray, and the word for the pieces.</summary>
internal static class PieceOf
{
    /// <summary>
    /// What a shaping makes: in a tin a loaf of its form, else what the word for the pieces says; null where neither tells, which leaves a bun or a
    /// round loaf.
    /// </summary>
    public static PieceShape? Shaped(Step step, Stage stage) => step.Vessel?.Shape == VesselShape.Tin && stage.Recipe.Make?.Pieces == 1
        ? PieceShape.TinLoaf
        : ShapeWords.Of(stage.Recipe.Make?.What ?? "");

    /// <summary>One piece of a portion as it lies in a step.</summary>
    /// <param name="volume">Of one piece as it was shaped, m³.</param>
    /// <param name="growth">Volume now over that.</param>
    public static PieceForm In(Step step, Portion portion, double volume, double growth = 1)
    {
        var shape = In(step, portion);
        var vessel = step.Vessel ?? portion.Vessel;
        var size = (shape, vessel?.Shape) is (PieceShape.TinLoaf, VesselShape.Tin) or (PieceShape.Sheet, VesselShape.Tray or VesselShape.Tin) ? vessel!.Size : null;
        var form = PieceForms.Of(shape, volume, growth, size, step.Depth);
        return portion.PiecesTouch && step.Depth is null ? form.Surrounded() : form;
    }

    /// <summary>
    /// Whether the pieces find no room apart on their trays as they are shaped. Then they lose their sides to each other; where no tray's floor or
    /// number is written they are taken to lie apart.
    /// </summary>
    public static bool Touch(Portion shaped, double volume, Stage stage)
    {
        var tray = stage.Recipe.Steps.Select(step => step.Vessel).LastOrDefault(vessel => vessel is { Shape: VesselShape.Tray, Size.Floor: not null });
        return shaped.Pieces > 1
            && stage.Recipe.Steps.Select(step => step.Trays).LastOrDefault(count => count is > 0) is { } trays
            && tray?.Size is { } size
            && TrayLoad.Of(PieceForms.Of(shaped.Shape ?? PieceShape.Ball, volume), size) is { } load
            && load.Of((shaped.Pieces + trays - 1) / trays) != Lying.Apart;
    }

    private static PieceShape In(Step step, Portion portion) => step switch
    {
        { Depth: not null } => PieceShape.Sheet,
        // Laid into its tin for the proof without a word about it in the shaping.
        { Kind: StepKind.Proof, Vessel.Shape: VesselShape.Tin } when portion.Pieces == 1 => PieceShape.TinLoaf,
        _ when portion.Shape is { } shaped => shaped,
        _ when portion.Vessel?.Shape == VesselShape.Tin && portion.Pieces == 1 => PieceShape.TinLoaf,
        _ => portion.Pieces > 1 ? PieceShape.Ball : PieceShape.Boule,
    };
}
