using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// Whether the risen pieces have room: in a tin whose size is known, by the trade's room for each gram; on trays whose floor and number are known,
/// by the floor that the pieces cover when they have risen. What nobody wrote is not guessed.
/// </summary>
internal static class PiecesFit
{
    /// <summary>Doughs that rise less fill their tin more; the range is of wheat.</summary>
    private const double HoldsAsWheat = 2.5;

    private static readonly Temperature PropertiesAt = Temperature.FromCelsius(25);

    public static IEnumerable<Finding> Of(RunResult run) => [.. Bowl(run), .. Tin(run), .. Tray(run)];

    /// <summary>A bowl whose size is known, at the end of each rise or rest in it: told once, where the dough stands highest.</summary>
    private static IEnumerable<Finding> Bowl(RunResult run)
    {
        var fullest = run.Each()
            .Where(pair => pair.Step is { Kind: StepKind.Bulk or StepKind.Rest, Vessel: { Shape: VesselShape.Bowl or VesselShape.Pot, Size.Volume: not null } })
            .Select(pair => (pair.Step, Room: pair.Step.Vessel!.Size!.Volume!.Value, Needs: RoomOf(pair.Outcome.After)))
            .Where(held => held.Needs is { } needs && needs > held.Room)
            .OrderByDescending(held => held.Needs!.Value.Litres)
            .FirstOrDefault();
        if (fullest.Step is { } step)
        {
            yield return StepFindings.About(step, "bowl-too-small", Grade.Warning, false, ("needs", fullest.Needs!.Value), ("room", fullest.Room));
        }
    }

    /// <summary>Room that all of a risen dough takes; null when that is not known.</summary>
    private static Volume? RoomOf(Portion portion) =>
        portion is { Dough: { } dough, Pieces: 1 } && portion.Mass > Mass.Zero && ThermalProperties.Of(portion.Composition, PropertiesAt) is { } properties
            ? Volume.FromLitres(1000 * Body.VolumeOf(portion.Mass, properties) * portion.Swollen(dough.VolumePerGasFree.Central))
            : null;

    private static IEnumerable<Finding> Tin(RunResult run)
    {
        var (flour, ceiling) = HomeRun.FlourOf(run.Stage.Formula);
        if (flour is null || ceiling.Likely < HoldsAsWheat || run.Stage.Recipe.Make is not { Pieces: 1 } || Sized(run, VesselShape.Tin) is not { } at)
        {
            yield break;
        }

        var (step, outcome, size) = at;
        var mass = outcome.After.Mass;
        if (size.Volume is not { Litres: > 0 } room || mass <= Mass.Zero)
        {
            yield break;
        }

        var fill = TinFill.Of(room, mass);
        if (fill.RunsOver || fill.IsLost)
        {
            yield return StepFindings.About(
                step,
                fill.RunsOver ? "tin-too-small" : "tin-too-large",
                Grade.Hint,
                false,
                ("dough", mass),
                ("room", room),
                ("from", Volume.FromLitres(TinFill.Least * mass.Grams / 1000)),
                ("to", Volume.FromLitres(TinFill.Most * mass.Grams / 1000)));
        }
    }

    private static IEnumerable<Finding> Tray(RunResult run)
    {
        if (run.Stage.Recipe.Make is not { Pieces: > 1 } make || Sized(run, VesselShape.Tray) is not { } at
            || run.Stage.Recipe.Steps.Select(step => step.Trays).FirstOrDefault(trays => trays is > 0) is not { } trays
            || ThermalProperties.Of(at.Outcome.After.Composition, PropertiesAt) is not { } properties || at.Outcome.After is not { Dough: { } dough } portion)
        {
            yield break;
        }

        var gasFree = Body.VolumeOf(portion.Mass / make.Pieces, properties);
        var form = PieceForms.Of(portion.Shape ?? PieceShape.Ball, gasFree, portion.Swollen(dough.VolumePerGasFree.Central));
        var each = (make.Pieces + trays - 1) / trays;
        if (TrayLoad.Of(form, at.Size) is { } load && load.Of(each) == Lying.TooMany)
        {
            yield return StepFindings.About(
                at.Step, "tray-too-small", Grade.Warning, false, ("pieces", each), ("what", make.What), ("room", load.Touching), ("apart", load.Apart), ("long", form.Long));
        }
    }

    /// <summary>The last step of the dough, up to the bake, that names a vessel of a kind with its size.</summary>
    private static (Step Step, StepOutcome Outcome, VesselSize Size)? Sized(RunResult run, VesselShape shape)
    {
        for (var index = run.Outcomes.Count - 1; index >= 0; index--)
        {
            var step = run.Graph.Steps[index];
            if (step.Kind is StepKind.Shape or StepKind.Proof or StepKind.Bake && step.Vessel is { Size: { } size } vessel && vessel.Shape == shape)
            {
                return (step, run.Outcomes[index], size);
            }
        }

        return null;
    }
}
