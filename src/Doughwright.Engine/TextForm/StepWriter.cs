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
            .Words(StepKeys.Name, step.Name)
            .Words(KindWord.Key, EnumWords<StepKind>.Of(step.Kind) is var kind && kind == step.Id ? null : kind)
            .Words(StepsSection.Of, step.Component);
        How(builder, step, Order(step, part), everything: false);
        return builder.Photos(step.Photos).Items(StepsSection.Learn, step.Learn).Keys(VariantsSection.Key, Variants(step, part)).Mapping;
    }

    private static string[] Order(Step step, Component? part) =>
        [.. step.Order.Select(id => part?.Lines.FirstOrDefault(line => line.Id == id)?.Name ?? id)];

    /// <param name="everything">Says what is usual too, so that a variant can take back what its step says.</param>
    private static void How(TreeBuilder builder, Step step, IReadOnlyList<string> order, bool everything)
    {
        builder
            .Words(StepKeys.Hands, step.Hands == Duration.Zero && !everything ? null : ExactText.Of(step.Hands))
            .Words(StepKeys.Way, step.Way is { } way ? EnumWords<MixingWay>.Of(way) : null)
            .Words(StepKeys.Where, step.Where == Where.Room && !everything ? null : EnumWords<Where>.Of(step.Where))
            .Words(StepKeys.Oven, step.Oven is { } oven ? Oven(oven) : null)
            .Words(StepKeys.Trays, step.Trays?.ToString(CultureInfo.InvariantCulture))
            .Words(StepKeys.On, step.On == BakedOn.Tray && !everything ? null : EnumWords<BakedOn>.Of(step.On))
            .Words(StepKeys.Steam, OvenGrammar.SteamText(step.Steam, everything))
            .Words(StepKeys.Lid, OvenGrammar.LidText(step.LidOff, everything))
            .Words(StepKeys.Vessel, step.Vessel is { } vessel ? Vessel(vessel) : null)
            .Words(StepKeys.Depth, step.Depth is { } depth ? ExactText.OfDepth(depth) : null)
            .Words(StepKeys.Cover, step.Cover == Cover.Open && !everything ? null : EnumWords<Cover>.Of(step.Cover))
            .Items(StepsSection.Order, order);
        builder = step.Folds switch
        {
            [] => everything ? builder.Words(StepKeys.Fold, StepKeys.None) : builder,
            [var only] => builder.Words(StepKeys.Fold, Fold(only)),
            _ => builder.List(StepKeys.Folds, [.. step.Folds.Select(Fold)]),
        };
        builder
            .Words(StepKeys.Ends, step.End is { } end ? End(end) : null)
            .Words(StepKeys.Measured, step.Measured is { } measured ? Measured(measured) : null)
            .Prose(StepKeys.Cue, step.Cue)
            .Items(StepKeys.Tools, step.Tools.Count == 0 && everything ? [StepKeys.None] : step.Tools)
            .Prose(StepKeys.Words, step.Words);
    }

    private static TextMapping Variants(Step step, Component? part)
    {
        var variants = new TreeBuilder();
        var usual = Whole(step, part).Select(Text).ToHashSet();
        foreach (var (id, variant) in step.Variants)
        {
            // What was measured belongs to the one way in which it was seen, so it is said even where it is the same.
            var other = Whole(variant, part).Where(entry => entry.Key == StepKeys.Measured || !usual.Contains(Text(entry))).ToArray();
            variants.Keys(id, new(other.Length > 0 ? other : [.. Whole(variant, part).Take(1)], Position.None));
        }

        return variants.Mapping;
    }

    private static IReadOnlyList<TextEntry> Whole(Step step, Component? part)
    {
        var builder = new TreeBuilder().Words(StepKeys.Name, step.Name);
        How(builder, step, Order(step, part), everything: true);
        return builder.Mapping.Entries;
    }

    private static string Text(TextEntry entry) => new TextDocument(new([entry], Position.None), []).Normalised();

    private static string Oven(OvenSetting oven) =>
        ExactText.Of(oven.Dial) + (oven.Mode is { } mode ? " " + EnumWords<OvenMode>.Of(mode) : "")
            + (oven.Then is { } then ? ", " + ExactText.Of(then.Dial) + OvenGrammar.After + ExactText.Of(then.After) : "");

    private static string Vessel(Vessel vessel) => vessel.IsNone ? StepGrammar.None
        : (vessel.Name ?? Described(vessel)) + (vessel.Warmed ? ", " + StepGrammar.Warmed : "");

    /// <summary>A vessel by what it is.</summary>
    public static string Described(Vessel vessel) =>
        (vessel.Material is { } material ? EnumWords<VesselMaterial>.Of(material) + " " : "") + EnumWords<VesselShape>.Of(vessel.Shape)
            + (vessel.Mass is { } mass ? ", " + ExactText.Of(mass) : "")
            + (vessel.Size is { } size ? ", " + VesselSizeText.Write(size) : "");

    private static string Fold(Fold fold) => $"{StepGrammar.At} {ExactText.Of(fold.After)}"
        + (fold.Hands == Duration.Zero ? "" : $", {ExactText.Of(fold.Hands)} {StepGrammar.ByHand}");

    private static string End(StepEnd end) => end switch
    {
        StepEnd.AfterTime after => $"{EndGrammar.After} {ExactText.Of(after.Time)}",
        StepEnd.AtTemperature at => $"{EndGrammar.At} {ExactText.Of(at.Temperature)}",
        StepEnd.AtGrowth growth => $"{EndGrammar.At} {NumberText.Exact(growth.Times)} {EndGrammar.TimesItsVolume}",
        StepEnd.AtCore core => $"{EndGrammar.CoreAt} {ExactText.Of(core.Temperature)}",
        StepEnd.ByCue cue => $"{EndGrammar.ByItsCue}, {EndGrammar.About} {ExactText.Of(cue.Estimate)}",
        StepEnd.WhenRipe { About: { } about } => $"{EndGrammar.Ripe}, {EndGrammar.About} {ExactText.Of(about)}",
        StepEnd.WhenRipe => EndGrammar.Ripe,
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, "Not an end of a step."),
    };

    private static string Measured(Measured measured)
    {
        var time = measured.Time is { } duration ? ExactText.Of(duration) : null;
        var temperature = measured.Temperature is { } celsius ? ExactText.Of(celsius) : null;
        return string.Join(MeasuredGrammar.And, new[] { time, temperature }.OfType<string>())
            + (measured.On is { } on ? MeasuredGrammar.On + on : "")
            + (measured.Air is { } air ? $", {MeasuredGrammar.InARoomOf} {ExactText.Of(air)}" : "")
            + (measured.TimesSeen > 1 ? $", {MeasuredGrammar.Seen} {NumberText.Exact(measured.TimesSeen)} {MeasuredGrammar.Times}" : "");
    }
}
