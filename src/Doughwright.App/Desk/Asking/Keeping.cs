using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Asking;

/// <summary>Why the dough of another kitchen is kept as warm as at home, or why not.</summary>
internal enum KeepState
{
    /// <summary>The recipe is made at home.</summary>
    Home,

    /// <summary>Something goes in warmer or colder for it.</summary>
    Kept,

    /// <summary>A person wants the recipe as it is written.</summary>
    AsWritten,

    /// <summary>There is no dough, or its temperature at home is not known.</summary>
    DoughUnknown,

    /// <summary>Nothing in the dough may be warmed or cooled for it.</summary>
    NothingFree,

    /// <summary>What must be warmed would hurt what it meets.</summary>
    NotAdvised,

    /// <summary>No warmth between freezing and boiling does it.</summary>
    OutOfReach,
}

/// <summary>
/// Keeps the dough as warm after mixing as it is at home, when a person takes a recipe to another kitchen: the first answer of the engine, when it can be
/// recommended, becomes part of the question. An address that asks for a kitchen alone means just that, as on the command line.
/// </summary>
/// <param name="Question">The question with what keeps the dough, or without it.</param>
internal sealed record Keeping(Question Question, KeepState State)
{
    public static IReadOnlyList<string> Names { get; } = [Question.Dough, Question.Free];

    /// <summary>Applies the rule to what a person has set. What they asked for themselves, another dough or other free lines, stays asked for.</summary>
    /// <param name="reader">Of the recipe.</param>
    /// <param name="formula">Of the recipe as written.</param>
    /// <param name="home">The recipe at home.</param>
    public static Keeping Of(Question question, QuestionReader reader, Formula formula, Rehearsal home)
    {
        var bare = question.Without(Names);
        if (reader.Read(bare, MeasureSystem.Metric).Request.Kitchen is null)
        {
            return new(bare.With(Question.AsWrittenName, null), KeepState.Home);
        }

        if (question.AsWritten)
        {
            return new(bare, KeepState.AsWritten);
        }

        var asked = reader.Read(question, MeasureSystem.Metric);
        if ((asked.Request.Dough ?? HomeDough(home)) is not { } wanted)
        {
            return new(bare, KeepState.DoughUnknown);
        }

        // Without a word about what is free, the engine takes what it would offer. The likely lane is enough to tell which.
        var answer = Rehearser.Rehearse(formula, Larder.Shipped, asked.Request with { Dough = wanted }, lanes: 1).Solutions.FirstOrDefault();
        var state = StateOf(answer);
        return new(state == KeepState.Kept ? Keep(bare, asked, wanted, answer!) : bare, state);
    }

    /// <summary>What a dough is asked for in an address: whole tenths, as a person reads them.</summary>
    public static Temperature? HomeDough(Rehearsal home) => home.DoughMixed() is { } mixed
        ? Temperature.FromCelsius(Math.Round(mixed.Celsius, 1, MidpointRounding.AwayFromZero))
        : null;

    private static KeepState StateOf(Solution? answer) => answer switch
    {
        null or { Lines.Count: 0 } => KeepState.NothingFree,
        { Warmth: null, Ice: null } => KeepState.OutOfReach,
        { Offered: false } => KeepState.NotAdvised,
        _ => KeepState.Kept,
    };

    private static Question Keep(Question bare, Understood asked, Temperature wanted, Solution answer) => bare
        .With(Question.Dough, asked.Accepted.First(Question.Dough) ?? FormattableString.Invariant($"{wanted.Celsius:0.#}C"))
        .With(Question.Free, string.Join(',', answer.Lines));
}
