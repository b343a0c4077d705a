using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>What a step is to come to, beside its cue. A final proof has no growth as its goal.</summary>
internal static class MethodTarget
{
    public static Told Of(RehearsedStep step, Figures figures)
    {
        var voice = figures.Voice;
        var targets = new List<Told>();
        if (figures.Dial(step) is { } dial)
        {
            targets.Add(Told.Of(dial with { Strong = false, Was = null, Moved = dial.Differs }));
        }

        if (step.SettlesAt is { } settles)
        {
            targets.Add(Told.Say(voice, "recipe.target.settles", ("temperature", figures.Warmth(settles, $"steps.{step.Id}.settlesAtCelsius") with { Strong = false })));
        }
        else if (Keeps(step.Kind))
        {
            targets.Add(Warmth(step, figures));
        }

        if (step.Ripe is { Latest: { } latest } ripe)
        {
            targets.Add(Told.Say(
                voice,
                "recipe.target.ripe",
                ("earliest", Plain(figures.Time(ripe.Earliest, $"steps.{step.Id}.ripeEarliestMinutes"))),
                ("latest", Plain(figures.Time(latest, $"steps.{step.Id}.ripeLatestMinutes")))));
        }

        if (step.Kind == StepKind.Bulk && step.Growth is { } growth)
        {
            targets.Add(Told.Say(voice, "recipe.target.growth", ("growth", new Fig(voice.Text(growth), growth, $"steps.{step.Id}.growth"))));
        }

        if (step.RisesMeanwhile is { } meanwhile)
        {
            targets.Add(Told.Say(voice, "recipe.target.meanwhile", ("growth", new Fig(Show.Number(meanwhile, 1), meanwhile, $"steps.{step.Id}.growth"))));
        }

        if (step.Kind == StepKind.Shape && figures.Here.Recipe.Make is { } make)
        {
            targets.Add(Told.Say(voice, "recipe.target.pieces", ("pieces", Show.Number(make.Pieces, 0)), ("piece", make.PieceMass)));
        }

        return Told.Join(targets, voice.Words["list-comma"]);
    }

    /// <summary>Whether how warm it is matters in such a step.</summary>
    private static bool Keeps(StepKind kind) => kind is not (StepKind.Prepare or StepKind.Shape or StepKind.Glaze or StepKind.Preheat or StepKind.Finish);

    private static Told Warmth(RehearsedStep step, Figures figures)
    {
        var voice = figures.Voice;
        var home = figures.AtHome(step);
        if (step.Kind == StepKind.Mix && figures.Here.Components.FirstOrDefault(component => component.Id == step.Component)?.Mixed is { } mixed
            && figures.Here.Steps.Last(other => other.Component == step.Component && other.Kind == StepKind.Mix).Id == step.Id)
        {
            var other = figures.Home.Components.FirstOrDefault(component => component.Id == step.Component)?.Mixed?.Likely;
            return Told.Say(voice, "recipe.target.mixed", ("temperature", Plain(figures.Warmth(mixed.Likely, $"components.{step.Component}.mixedCelsius", other))));
        }

        return (step.StartTemperature, step.EndTemperature) switch
        {
            ({ } start, { } end) when voice.Degrees(start) != voice.Degrees(end) => Told.Say(
                voice,
                step.Kind == StepKind.Bake ? "recipe.target.core" : "recipe.target.from-to",
                ("start", figures.Degrees(start, $"steps.{step.Id}.startCelsius", home?.StartTemperature)),
                ("end", Plain(figures.Warmth(end, $"steps.{step.Id}.endCelsius", home?.EndTemperature)))),
            (_, { } end) => Told.Say(voice, "recipe.target.at", ("temperature", Plain(figures.Warmth(end, $"steps.{step.Id}.endCelsius", home?.EndTemperature)))),
            ({ } start, null) => Told.Say(voice, "recipe.target.at", ("temperature", Plain(figures.Warmth(start, $"steps.{step.Id}.startCelsius", home?.StartTemperature)))),
            _ => Told.Nothing,
        };
    }

    /// <summary>In a table the difference is seen, and home is not repeated.</summary>
    private static Fig Plain(Fig figure) => figure with { Strong = false, Was = null, Moved = figure.Differs };
}
