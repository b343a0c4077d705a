using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Places;

/// <summary>What an address asks of a warm place: names and values are those of the options of "place", read by the same code.</summary>
/// <param name="Read">The kitchen and the rest of the question.</param>
/// <param name="Step">The step that the dough waits in; null when it is refused, or nothing rises.</param>
/// <param name="Target">Null when it is not said, or refused.</param>
/// <param name="Typed">What stands in the field, its unit outside.</param>
/// <param name="Refused">What is wrong with step, target or lamp.</param>
/// <param name="Refusals">What else of the address is not used.</param>
internal sealed record PlaceAsk(
    Understood Read, Step? Step, Temperature? Target, string Typed, PlaceWish Wish, IReadOnlyList<Fault> Refused, IReadOnlyList<Refusal> Refusals)
{
    public const string ToName = "to";
    public const string StepName = "step";
    public const string Lamp = "lamp";
    public const string OpenWater = "open-water";

    /// <summary>A temperature that many doughs are set to rise at, for the field of a page that is not asked yet.</summary>
    public static readonly Temperature Usual = Temperature.FromCelsius(26);

    /// <summary>Names that belong to this page.</summary>
    public static IReadOnlyList<string> Own { get; } = [ToName, StepName, Lamp, OpenWater];

    /// <summary>Whether a target was asked for at all.</summary>
    public required bool IsAsked { get; init; }

    /// <summary>The address that asks it of a step, in the kitchen of a question.</summary>
    public static string Address(string recipe, string step, Temperature target, Question question) =>
        $"/recipes/{Uri.EscapeDataString(recipe)}/place{question.With(Question.Proof, null).With(StepName, step).With(ToName, FormattableString.Invariant($"{target.Celsius:0.##}C")).Query()}";

    /// <summary>The query with the unit of the field behind a bare number; null where it has one already, or there is none.</summary>
    public static string? Completed(string query, MeasureSystem measures)
    {
        var question = Question.Of(query);
        var typed = (question.First(ToName) ?? "").Trim();
        return typed.Length > 0 && char.IsAsciiDigit(typed[^1]) && typed.All(sign => char.IsAsciiDigit(sign) || sign is '.' or ',' or '-' or '+' or '\u2212')
            ? question.With(ToName, typed + (measures == MeasureSystem.Us ? "F" : "C")).Query()
            : null;
    }

    /// <param name="file">With a recipe.</param>
    public static PlaceAsk Of(string query, RecipeFile file, ShelfFolder shelf, Voice voice)
    {
        var all = Question.Of(query);
        var about = all.Only(all.Items.Where(item => !Own.Contains(item.Name) && item.Name != Question.Proof));
        var read = new QuestionReader(file.Recipe!, file.Name, shelf, voice.Words).Read(about, voice.Measures);
        var (options, faults) = (new Options(), new Faults(voice, FieldNames.Of(voice.Words)));
        string[] own = [.. all.Items.Where(item => Own.Contains(item.Name)).Select(item => item.Name == OpenWater ? $"--{OpenWater}" : item.Argument)];
        var asked = new PlaceOptions(new Given(options.Parse([options.Place.Name, "recipe", .. own]), faults), options);
        var step = asked.StepOf(file.Recipe!);
        var isAsked = all.Has(ToName);
        var target = isAsked ? asked.Target() : null;
        var wish = asked.Wish();
        return new(
            read,
            step,
            target,
            target is { } known ? FieldUnit.Number(known, voice.Measures) : all.First(ToName) ?? FieldUnit.Number(Usual, voice.Measures),
            wish,
            faults.All,
            // The warmth of the proofing place is what is asked for here.
            [.. all.Items.Where(item => item.Name == Question.Proof).Select(item => Refusal.Unknown(item, [.. Question.Known.Where(name => name != Question.Proof), .. Own], voice)), .. read.Refusals])
        {
            IsAsked = isAsked,
        };
    }
}
