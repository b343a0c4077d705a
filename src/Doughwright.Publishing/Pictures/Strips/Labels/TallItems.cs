using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>What is written beside the tall strip, in order of time.</summary>
internal static class TallItems
{
    private const int MostNames = 2;
    private const int MostCues = 4;

    public static IReadOnlyList<TallItem> Of(Plan plan, StripWords words) =>
    [
        .. plan.Steps.Where(step => step.Start >= 0).SelectMany(step => OfStep(plan, step, words))
            .Append(Item(plan.End, null, words.Outcome, words.IsBeforeBaking ? words.Ready : words.WeightAndReady))
            .OrderBy(item => item.Minute),
    ];

    private static IEnumerable<TallItem> OfStep(Plan plan, PlannedStep step, StripWords words)
    {
        yield return Item(step.Start, step.Id, words.Name(step), Value(plan, step, words));
        foreach (var fold in step.Step.Events)
        {
            yield return Item(step.Start + fold.After.Likely.Minutes, null, words.Say("strip-fold"), words.Voice.Text(fold.Hands));
        }

        if (step.EndsByCue && words.Cue(step) is { } cue)
        {
            var lines = Wrapping.Cue(cue, shorter => words.CueWithRange(shorter, step), TallColumn.Room, MostCues) ?? [words.EndRange(step)];
            yield return new(step.Start + step.Step.Time!.Value.Low.Minutes, null, [.. lines.Select(line => (Type.Cue, line))], IsCue: true);
        }
    }

    private static TallItem Item(double minute, string? step, string name, string value) => new(minute, step,
    [
        .. (Wrapping.OrCut(name, Type.BigHead, TallColumn.Room, MostNames) ?? []).Select(line => (Type.BigHead, line)),
        .. (Wrapping.Of(value, Type.BigValue, TallColumn.Room) ?? [value]).Select(line => (Type.BigValue, line)),
    ]);

    private static string Value(Plan plan, PlannedStep step, StripWords words)
    {
        var time = words.Time(step);
        return step.Kind switch
        {
            StepKind.Preheat => words.Dial(step) ?? time,
            _ when step.Step is { IsCooked: true, EndTemperature: { } hot } => words.Say("strip-time-at", ("time", time), ("warmth", hot)),
            StepKind.Scald when step.Step.StartTemperature is { } poured && plan.Course.FindStrand(step.Step.Component) is { } strand =>
                words.Say("strip-mass-at", ("mass", strand.Stretches[0].Points[^1].Mass), ("warmth", poured)),
            StepKind.Glaze when plan.Washes.FirstOrDefault(wash => wash.Step == step)?.Mass is { } mass => words.Say("strip-mass-time", ("mass", mass), ("time", time)),
            StepKind.Glaze or StepKind.Finish when plan.Strands.FirstOrDefault(strand => strand.Joins == step && strand.Into is null)?.Track is { } laidOn =>
                words.Say("strip-mass-time", ("mass", Engine.Quantities.Mass.FromGrams(laidOn.Grams(laidOn.End))), ("time", time)),
            _ when step.Step.SettlesAt is { } settles => words.Say("strip-settles", ("warmth", settles)),
            StepKind.Bulk or StepKind.Proof when step.Step is { StartTemperature: { } from, EndTemperature: { } to } =>
                words.Say("strip-time-between", ("time", time), ("from", words.Voice.Degrees(from)), ("to", to)),
            StepKind.Bake when step.Step.EndTemperature is { } core => words.Say("strip-time-core", ("time", time), ("warmth", core)),
            StepKind.Mix or StepKind.Cool or StepKind.Warm when step.Step.EndTemperature is { } end => words.Say("strip-time-to", ("time", time), ("warmth", end)),
            _ => time,
        };
    }
}
