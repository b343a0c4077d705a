using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>What is said about a plan, in words and figures.</summary>
internal sealed class StripWords(Plan plan, Voice voice)
{
    /// <summary>Less than this is not worth a figure.</summary>
    private const double LeastGrams = 1;

    public Voice Voice => voice;

    public string Say(string key, params ReadOnlySpan<(string Name, object? Value)> arguments) => voice.Say(key, arguments);

    public string Name(PlannedStep step) => StepName.Of(step.Step, voice);

    /// <summary>One short word for a step, where its own name finds no room.</summary>
    public string ShortName(PlannedStep step) => voice.Words[$"strip-kind.{Voice.Kebab(step.Kind.ToString())}"];

    /// <summary>How long a step takes; that it never ends; or that it cannot be told.</summary>
    public string Time(PlannedStep step) => step.Step.Time is { } time ? voice.Text(time.Likely)
        : voice.Words[step.Step.SettlesAt is null ? "cannot-be-told" : "never-here"];

    public string Text(Temperature temperature) => voice.Text(temperature);

    public string Text(Mass mass) => voice.Text(mass);

    public string Elapsed(double minutes) => voice.Text(Duration.FromMinutes(minutes), "column");

    /// <summary>The third line of a head: how hot the core comes out, or what the bake took.</summary>
    public string? Aim(PlannedStep step)
    {
        if (step.Kind == StepKind.Bake && step.Step.EndTemperature is { } core)
        {
            return Say("strip-to", ("warmth", core));
        }

        return plan.OnBench.LastOrDefault(other => other.Start < step.Start && other.Kind == StepKind.Bake) is { } bake
            && bake.EndOrStart <= step.Start + 1e-6 && Loss(bake) is { } loss
            ? Say("strip-loss", ("mass", loss))
            : null;
    }

    /// <summary>What the dough loses in a step; null when that is nothing, or not known.</summary>
    public Mass? Loss(PlannedStep step) => plan.Body is { } body && body.Grams(step.Start) - body.Grams(step.EndOrStart) is var grams and >= LeastGrams
        ? Mass.FromGrams(grams)
        : null;

    /// <summary>What a person sees at the end of a step: the author's words, or how far it has risen. A proof's growth is no goal.</summary>
    public string? Cue(PlannedStep step) => step.Step.Cue ?? (step.Kind == StepKind.Bulk && Target(step) is { } times
        ? times == 2 ? Say("strip-doubled") : Say("strip-times", ("times", times))
        : null);

    /// <summary>The growth at which a bulk ends; null when it ends otherwise.</summary>
    public double? Target(PlannedStep step) => (step.Written?.End as StepEnd.AtGrowth)?.Times;

    /// <summary>When a step may end, after the first hand.</summary>
    public string EndRange(PlannedStep step)
    {
        var time = step.Step.Time!.Value;
        var start = Duration.FromMinutes(step.Start);

        // No line ends within it.
        return voice.Range(start + time.Low, time.High is { } high ? start + high : null).Replace(' ', '\u00a0');
    }

    public string CueWithRange(string cue, PlannedStep step) => Say("strip-cue", ("cue", cue), ("range", EndRange(step)));

    /// <summary>"10 rolls", or the title where the author does not say what it makes.</summary>
    public string Outcome => plan.Rehearsal.Recipe.Make is { } make
        ? Say("strip-make", ("pieces", make.Pieces), ("what", make.What))
        : plan.Rehearsal.Recipe.Title;

    /// <summary>Whether what comes out is weighed as it goes into the oven: it is baked, and what the oven takes is not known.</summary>
    public bool IsBeforeBaking => plan.OnBench.Any(step => step.Kind == StepKind.Bake && Loss(step) is null);

    /// <summary>What is laid on after the bake, a poured glaze say; null when nothing is, or when what is baked can be weighed.</summary>
    public Mass? AddedAfter => IsBeforeBaking && plan.Body is { } body && plan.OnBench.LastOrDefault(step => step.Kind == StepKind.Bake) is { } bake
        && body.Grams(body.End) - body.Grams(bake.EndOrStart) is var grams and >= LeastGrams
            ? Mass.FromGrams(grams)
            : null;

    /// <summary>What comes out, without what is laid on after the bake while nobody knows what the oven took.</summary>
    public Mass? Comes => plan.Body is { } body ? Mass.FromGrams(body.Grams(body.End) - (AddedAfter?.Grams ?? 0)) : null;

    /// <summary>"816 g before baking, after 6 h"; the time alone where nothing can be weighed.</summary>
    public string WeightAndReady => plan.Body is { } body
        ? AddedAfter is { } added ? Say("strip-outcome-added-after", ("mass", Comes), ("added", added), ("ready", Ready))
            : Say(IsBeforeBaking ? "strip-outcome-before-baking" : "strip-outcome", ("mass", Mass.FromGrams(body.Grams(body.End))), ("ready", Ready))
        : Ready;

    public string Ready => plan.Rehearsal.Total is { } total ? Say("strip-ready", ("time", total.Likely)) : Say("strip-ready-unknown");

    /// <summary>"170 °C fan"; the customary pair in the measures of the reader.</summary>
    public string? Dial(PlannedStep step) => (step.Step.Dial ?? plan.Steps.FirstOrDefault(bake => bake.Kind == StepKind.Bake && bake.Start >= step.Start)?.Step.Dial) is { } dial
        ? voice.Dial(dial.Here)
        : null;

    public Duration FireTime => Duration.FromMinutes(Rails.Fires(plan).Sum(fire => fire.Step.EndOrStart - fire.Step.Start));

    public string Title(string key) => Say(key, ("title", plan.Rehearsal.Recipe.Title));

    /// <summary>Only of the dough: parts beside it are drawn by weight, without gas in any case.</summary>
    private IEnumerable<string> Untold => plan.Body is { RiseUntold: true } body
        ? [Say("strip-rise-untold", ("parts", plan.NameOf(body.Strand.Component)))]
        : [];

    public string Description
    {
        get
        {
            var course = plan.Steps.Where(step => step.Start >= 0).Select(step => Say("strip-course-step", ("step", Name(step)), ("start", Elapsed(step.Start))));
            var before = plan.Steps.Where(step => step.Start < 0).Select(step => Say("before-start", ("time", Duration.FromMinutes(-step.Start)), ("step", Name(step))));
            return string.Join(' ', [Say("strip-description", ("what", Outcome), ("end", WeightAndReady), ("course", voice.List(course))), .. before, .. Untold, Say("strip-table")]);
        }
    }
}
