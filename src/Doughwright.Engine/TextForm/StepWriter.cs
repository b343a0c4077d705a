using System.Globalization;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>A step as a tree, in the order of the form; what is usual is left out.</summary>
internal static class StepWriter
{
    public static TextMapping Write(Step step, Component? part)
    {
        var builder = new TreeBuilder()
            .Words(StepsSection.Name, step.Name)
            .Words(KindWord.Key, EnumWords<StepKind>.Of(step.Kind) is var kind && kind == step.Id ? null : kind)
            .Words(StepsSection.Of, step.Component)
            .Words(StepsSection.Hands, step.Hands == Duration.Zero ? null : ExactText.Of(step.Hands))
            .Words(StepsSection.Way, step.Way is { } way ? EnumWords<MixingWay>.Of(way) : null)
            .Words(StepsSection.Where, step.Where == Where.Room ? null : EnumWords<Where>.Of(step.Where))
            .Words(StepsSection.Oven, step.Oven is { } oven ? Oven(oven) : null)
            .Words(StepsSection.Trays, step.Trays?.ToString(CultureInfo.InvariantCulture))
            .Words(StepsSection.Vessel, step.Vessel is { } vessel ? Vessel(vessel) : null)
            .Words(StepsSection.Depth, step.Depth is { } depth ? ExactText.OfDepth(depth) : null)
            .Words(StepsSection.Cover, step.Cover == Cover.Open ? null : EnumWords<Cover>.Of(step.Cover))
            .Items(StepsSection.Order, [.. step.Order.Select(id => part?.Lines.FirstOrDefault(line => line.Id == id)?.Name ?? id)]);
        builder = step.Folds is [var only]
            ? builder.Words(StepsSection.Fold, Fold(only))
            : builder.List(StepsSection.Folds, [.. step.Folds.Select(Fold)]);
        return builder
            .Words(StepsSection.Ends, step.End is { } end ? End(end) : null)
            .Words(StepsSection.Measured, step.Measured is { } measured ? Measured(measured) : null)
            .Prose(StepsSection.Cue, step.Cue)
            .Items(StepsSection.Tools, step.Tools)
            .Prose(StepsSection.Words, step.Words)
            .Mapping;
    }

    private static string Oven(OvenSetting oven) =>
        ExactText.Of(oven.Dial) + (oven.Mode is { } mode ? " " + EnumWords<OvenMode>.Of(mode) : "");

    private static string Vessel(Vessel vessel) => vessel.IsNone ? StepGrammar.None
        : (vessel.Material is { } material ? EnumWords<VesselMaterial>.Of(material) + " " : "") + EnumWords<VesselShape>.Of(vessel.Shape)
            + (vessel.Mass is { } mass ? ", " + ExactText.Of(mass) : "")
            + (vessel.Size is { } size ? ", " + VesselSizeText.Write(size) : "") + (vessel.Warmed ? ", " + StepGrammar.Warmed : "");

    private static string Fold(Fold fold) => $"{StepGrammar.At} {ExactText.Of(fold.After)}"
        + (fold.Hands == Duration.Zero ? "" : $", {ExactText.Of(fold.Hands)} {StepGrammar.ByHand}");

    private static string End(StepEnd end) => end switch
    {
        StepEnd.AfterTime after => $"{EndGrammar.After} {ExactText.Of(after.Time)}",
        StepEnd.AtTemperature at => $"{EndGrammar.At} {ExactText.Of(at.Temperature)}",
        StepEnd.AtGrowth growth => $"{EndGrammar.At} {NumberText.Exact(growth.Times)} {EndGrammar.TimesItsVolume}",
        StepEnd.AtCore core => $"{EndGrammar.CoreAt} {ExactText.Of(core.Temperature)}",
        StepEnd.ByCue cue => $"{EndGrammar.ByItsCue}, {EndGrammar.About} {ExactText.Of(cue.Estimate)}",
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, "Not an end of a step."),
    };

    private static string Measured(Measured measured)
    {
        var time = measured.Time is { } duration ? ExactText.Of(duration) : null;
        var temperature = measured.Temperature is { } celsius ? ExactText.Of(celsius) : null;
        return string.Join(MeasuredGrammar.And, new[] { time, temperature }.OfType<string>())
            + (measured.On is { } on ? MeasuredGrammar.On + on : "")
            + (measured.TimesSeen > 1 ? $", {MeasuredGrammar.Seen} {NumberText.Exact(measured.TimesSeen)} {MeasuredGrammar.Times}" : "");
    }
}
