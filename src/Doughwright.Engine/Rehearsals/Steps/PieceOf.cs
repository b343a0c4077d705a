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
        return PieceForms.Of(shape, volume, growth, size, step.Depth);
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
