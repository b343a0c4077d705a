using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>What to make, and what the lines come to.</summary>
/// <param name="Pieces">Null where the recipe does not say what it makes.</param>
public sealed record MakeView(string? Pieces, string What, string Each, string Unit, Told Answer)
{
    /// <summary>What is held while the sentence changes.</summary>
    public string Held { get; init; } = "";

    /// <summary>What can be held: value and name.</summary>
    public IReadOnlyList<(string Value, string Name)> Holdable { get; init; } = [];

    /// <summary>Weight of the line that is held, as it stands in its field; null where none is.</summary>
    public string? HeldAt { get; init; }

    private const string Grams = "\u00a0g";

    internal static MakeView Of(Formula formula, string held, Voice voice)
    {
        var make = formula.Recipe.Make;
        var piece = make is null ? "" : voice.Text(make.PieceMass);
        var isGrams = piece.EndsWith(Grams, StringComparison.Ordinal);
        var choices = HoldEdits.Choices(formula.Recipe);
        var twice = choices.GroupBy(one => one.Line.Name).Where(group => group.Count() > 1).Select(group => group.Key).ToHashSet();
        return new(
            make is null ? null : Digits.Of(make.Pieces),
            make?.What ?? "",
            isGrams ? Digits.Of(make!.PieceMass.Grams) : piece,
            isGrams ? "g" : "",
            Told.Join(Sentences(formula, voice), " "))
        {
            Held = choices.Any(one => one.Held == held) || held == HoldEdits.Proportions ? held : HoldEdits.Nothing,
            Holdable =
            [
                (HoldEdits.Nothing, voice.Words["hold.nothing"]),
                (HoldEdits.Proportions, voice.Words["hold.proportions"]),
                .. choices.Select(one => (one.Held, voice.Say(twice.Contains(one.Line.Name) ? "hold.line-in" : "hold.line", ("line", one.Line.Name), ("part", formula.FindComponent(one.Held.Split('/')[0])?.Name)))),
            ],
            HeldAt = choices.FirstOrDefault(one => one.Held == held).Line?.Mass is { } mass ? WithoutGrams(voice.Text(mass)) : null,
        };
    }

    private static string WithoutGrams(string weight) => weight.EndsWith(Grams, StringComparison.Ordinal) ? weight[..^Grams.Length] : weight;

    private static IEnumerable<Told> Sentences(Formula formula, Voice voice)
    {
        var dough = Weight(formula.Dough, "formula.doughGrams", voice);
        if (formula.Flour > Mass.Zero)
        {
            yield return Told.Say(
                voice,
                "write.answer",
                ("dough", dough),
                ("flour", Weight(formula.Flour, "formula.flourGrams", voice)),
                ("hydration", Share(formula.Percent.Hydration, "formula.percent.hydration", voice)),
                ("water", Share(formula.Percent.TrueWater, "formula.percent.trueWater", voice)));
        }
        else
        {
            yield return Told.Say(voice, "write.answer-no-flour", ("dough", dough));
        }

        if (formula.Recipe.Make is { } make && formula.IsMassKnown && Mass.FromGrams(formula.Dough.Grams - (make.PieceMass.Grams * make.Pieces)) is var over && Math.Abs(over.Grams) >= 0.5)
        {
            yield return over > Mass.Zero
                ? Told.Say(voice, "write.over", ("over", new Fig(voice.Text(over)) { Strong = true }))
                : Told.Say(voice, "write.short", ("short", new Fig(voice.Text(Mass.FromGrams(-over.Grams))) { Strong = true }));
        }
    }

    private static Fig Weight(Mass mass, string of, Voice voice) => new(voice.Text(mass), mass.Grams, of) { Strong = true };

    private static object Share(Percent? share, string of, Voice voice) =>
        share is { } known ? new Fig(voice.Text(known), known.Value, of) { Strong = true } : new Piece.Unknown(voice.Words["not-known"]);
}
