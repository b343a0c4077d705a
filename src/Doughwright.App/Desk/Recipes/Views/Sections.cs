using Doughwright.App.Desk.Places;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Text;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>The sections of a page that each show one sort of figures with its reasons.</summary>
internal sealed class Sections(Figures figures, PictureSet pictures)
{
    private readonly Publishing.Wording.Voice voice = figures.Voice;
    private bool opened;

    /// <summary>Id of the section about cooling.</summary>
    public const string Cooling = "cooling";

    public static IReadOnlyList<Section> Of(Figures figures, PictureSet pictures) => [.. new Sections(figures, pictures).All()];

    private IEnumerable<Section> All()
    {
        if (Matters(StepKind.Mix, Mixed) is { Count: > 0 } mixed)
        {
            yield return new("heat", voice.Words["recipe.heat"], mixed);
        }

        if (Coolings() is { Count: > 0 } cooled)
        {
            yield return new(Cooling, voice.Words["recipe.cooling"], cooled);
        }

        foreach (var step in figures.Here.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof))
        {
            yield return new($"rise-{step.Id}", Capital.Of(figures.StepName(step)), [Risen(step)]);
        }

        foreach (var step in figures.Here.Steps.Where(step => step.Kind == StepKind.Bake))
        {
            yield return new($"bake-{step.Id}", Capital.Of(figures.StepName(step)), [Baked(step)]) { IsBake = true };
        }
    }

    /// <summary>Each by the name of its step: a scald cools as well, and a cooling after the bake is another thing than one before the mix.</summary>
    private List<Matter> Coolings() =>
    [
        .. figures.Here.Steps.Where(step => step.Kind == StepKind.Cool || (step.Kind == StepKind.Scald && step.Basis != Basis.Stated))
            .Select(step => Cooled(step, Capital.Of(figures.StepName(step))))
            .OfType<Matter>(),
    ];

    /// <summary>Several are told apart by the name of their step.</summary>
    private List<Matter> Matters(StepKind kind, Func<RehearsedStep, string, Matter?> make)
    {
        var steps = figures.Here.Steps.Where(step => step.Kind == kind).ToArray();
        return [.. steps.Select(step => make(step, steps.Length > 1 ? Capital.Of(figures.StepName(step)) : "")).OfType<Matter>()];
    }

    private Matter? Mixed(RehearsedStep step, string name)
    {
        var component = figures.Here.Components.FirstOrDefault(known => known.Id == step.Component);
        if (component?.Mixed is not { } mixed)
        {
            return component?.Kind == ComponentKind.Dough ? new(step.Id, name, Told.Say(voice, "recipe.dough-unknown", ("unknown", figures.NotKnown($"steps.{step.Id}")))) : null;
        }

        // A dough that is mixed more than once has a temperature after each: only after the last is it mixed.
        var isLast = figures.Here.Steps.Last(other => other.Kind == StepKind.Mix && other.Component == component.Id).Id == step.Id;
        var home = figures.Home.Components.FirstOrDefault(known => known.Id == component.Id)?.Mixed?.Likely;
        var dough = isLast || step.EndTemperature is not { } end
            ? figures.Warmth(mixed.Likely, $"components.{component.Id}.mixedCelsius", home)
            : figures.Warmth(end, $"steps.{step.Id}.endCelsius", figures.AtHome(step)?.EndTemperature);
        var answer = figures.Here.Solutions is [{ Warmth: not null } first, ..] && isLast && component.Id == figures.Dough?.Id ? first : null;
        var fact = answer is { Warmth: { } warmth }
            ? Told.Say(
                voice,
                "recipe.fact.solved",
                ("names", figures.NamesOf(answer.Lines)),
                ("warmth", figures.Warmth(warmth.Likely, "solve.0.celsius", asked: true)),
                ("dough", dough with { Strong = false }))
            : Told.Say(voice, "recipe.fact.mixed", ("name", Capital.Of(figures.NameOf(component.Id))), ("dough", dough));
        return WithReasons(step, new(step.Id, name, fact)
        {
            Picture = pictures.Heat(step.Id),
            Saves = pictures.HeatSaves(step.Id, figures.StepName(step)),
            Caption = answer is null ? voice.Words["recipe.heat-caption"] : voice.Say("recipe.heat-caption-solved", ("caption", voice.Words["recipe.heat-caption"])),
            Table = pictures.HeatTable(step.Id),
            PictureInside = true,
        }, answer is { Warmth: { } asked } ? voice.Say("recipe.why", ("figure", voice.Text(asked.Likely, "asked"))) : voice.Say("recipe.why", ("figure", dough.Text)));
    }

    private Matter? Cooled(RehearsedStep step, string name) => step.Time is null && step.SettlesAt is null && step.EndTemperature is null ? null
        : Plain(step, name) is var plain && CoolSentences.Of(step, voice).ToArray() is { Length: > 0 } said ? plain with { State = Told.Join([.. said.Select(Told.Of)], " ") } : plain;

    private Matter Risen(RehearsedStep step) => Plain(step, "") with
    {
        Picture = pictures.Rise(step.Id),
        Saves = pictures.RiseSaves(step.Id, figures.StepName(step)),
        Elsewhere = PlaceAsk.Address(figures.State.File.Name, step.Id, PlaceAsk.Usual, figures.State.Setting.Question),
        Caption = voice.Words[pictures.HasHomeRise(step.Id) ? "recipe.rise-caption-home" : "recipe.rise-caption"],
    };

    private Matter Baked(RehearsedStep step)
    {
        var section = figures.State.Bakes?.Find(step.Id);
        var saves = pictures.BakeSaves(step.Id, figures.StepName(step));
        var matter = Plain(step, "");
        return figures.State.AwaitsBakes ? matter with { State = BakeState(step, section), Meanwhile = saves[0] }
            : section is null ? matter with { State = BakeState(step, section) }
            : matter with
            {
                State = BakeState(step, section),
                Picture = pictures.Bake(section),
                Table = pictures.BakeTable(section),
                Saves = saves,
                Caption = voice.Words[section.Lies ? "section.caption-lies" : "section.caption"],
            };
    }

    /// <summary>What comes out, what is still being computed, and then what that did to the figure: said where the figure stands.</summary>
    private Told? BakeState(RehearsedStep step, BakedSection? section) =>
        Told.Join([.. BakeSentences.Of(step, voice).Select(Told.Of), OverSection(step, section)], " ") is { IsEmpty: false } said ? said : null;

    private Told OverSection(RehearsedStep step, BakedSection? section) => (step, section) switch
    {
        _ when figures.Here.Recipe.FindStep(step.Id)?.Oven is null => Told.Nothing,
        _ when figures.State.AwaitsBakes => Told.Of(voice.Words[step.Basis == Basis.Computed ? "section.progress" : "section.progress-timed"]),
        (_, null) => Told.Of(voice.Words[step.Time is null || step.Basis != Basis.Computed ? "section.none-timed" : "section.none"]),
        ({ AlongRadius: { } radius, Time.Likely: var time }, _) => Show.Duration(radius) == Show.Duration(time)
            ? Told.Of(voice.Words["section.alike"])
            : Told.Say(voice, "section.replaced", ("time", Show.Duration(time)), ("radius", new Fig(Show.Duration(radius), radius.Minutes, $"steps.{step.Id}.radiusMinutes"))),
        _ => Told.Of(voice.Words["section.timed"]),
    };

    private Matter Plain(RehearsedStep step, string name)
    {
        var fact = step switch
        {
            { Time: { } time } => Told.Say(
                voice,
                step is { StartTemperature: { } from, EndTemperature: { } to, Kind: StepKind.Cool or StepKind.Scald } && voice.Degrees(from) != voice.Degrees(to) ? "recipe.fact.cools" : "recipe.fact.takes",
                ("time", figures.Likely(step, time)),
                ("until", figures.Until(step)),
                ("start", step.StartTemperature is { } start ? figures.Warmth(start, $"steps.{step.Id}.startCelsius") with { Strong = false } : ""),
                ("end", step.EndTemperature is { } end ? figures.Warmth(end, $"steps.{step.Id}.endCelsius") with { Strong = false } : "")),
            { SettlesAt: { } settles } => Told.Say(voice, "recipe.fact.never", ("temperature", figures.Warmth(settles, $"steps.{step.Id}.settlesAtCelsius"))),
            _ => Told.Say(voice, "recipe.fact.unknown", ("unknown", figures.NotKnown($"steps.{step.Id}"))),
        };
        var why = step.Time is { } known ? voice.Say("recipe.why", ("figure", voice.Text(known.Likely))) : voice.Words["recipe.why-so"];
        return WithReasons(step, new(step.Id, name, fact) { Basis = step.Time is null ? "" : voice.Words[$"recipe.basis.{Publishing.Wording.Voice.Kebab(step.Basis.ToString())}"] }, why);
    }

    /// <summary>A step whose figure rests on nothing more than the author's word needs no asking why.</summary>
    private Matter WithReasons(RehearsedStep step, Matter matter, string why)
    {
        var reason = step.Why();
        if (reason.Parts.Count == 0 && matter.Picture is null && step.Basis != Basis.Measured)
        {
            return matter;
        }

        var isFirst = !opened;
        opened = true;
        return matter with { Why = why, Reasons = MeasuredWhy.Of(step, WhyView.Of(reason, voice), figures), IsOpen = isFirst };
    }
}
