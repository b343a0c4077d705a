using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>A piece over its section in the oven of a kitchen: off its dial, set again, on a stone.</summary>
/// <remarks>Steam, a lid and a deck are not carried over a section, nor the cooler air when the door has just been shut; a stone not under what lies on its side, whose under face is no face of its own there.</remarks>
internal static class SectionOven
{
    /// <summary>Where it does not, the bake along one radius stands, which carries them.</summary>
    public static bool Carries(Step step, Stage stage) =>
        step is { Steam: null, LidOff: null } && stage.ModeOf(step.Oven!) != Kitchens.OvenMode.Deck;

    public static BakingPiece In(BakingPiece piece, bool lies, Step step, Stage stage)
    {
        if (step.Oven is not { } oven)
        {
            return piece;
        }

        var first = OvenDials.InsideAsWritten(oven, stage);
        var made = Ovens.For(step, stage, first);
        double Walls(double seconds) => made.Change is { } change ? change.At(first, seconds) : first;
        OvenFace Hot(OvenFace face) => face with { Air = Walls, Wall = Walls };
        return piece with
        {
            Top = Hot(piece.Top),
            Side = Hot(piece.Side),
            Bottom = Hot(piece.Bottom),
            Hearth = made.Hearth is { } slab && !lies ? new(slab, Walls) : null,
        };
    }
}
