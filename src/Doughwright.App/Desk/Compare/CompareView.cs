using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>The page of two kitchens, in finished words and pictures.</summary>
internal sealed record CompareView
{
    /// <summary>The sentence with two gaps, cut at them: words, "first", words, "second", words.</summary>
    public required IReadOnlyList<string> Sentence { get; init; }

    public required IReadOnlyList<CompareChoice> FirstChoices { get; init; }

    public required IReadOnlyList<CompareChoice> SecondChoices { get; init; }

    public required string FirstName { get; init; }

    public required string SecondName { get; init; }

    public required string FirstKitchen { get; init; }

    public required string SecondKitchen { get; init; }

    public required Rich Answer { get; init; }

    public required Rich Other { get; init; }

    /// <summary>The way between the recipe as written and a kept dough; null where there is none.</summary>
    public required CompareLink? Turn { get; init; }

    public required IReadOnlyList<Refusal> Refusals { get; init; }

    public required IReadOnlyList<CompareRow> Rows { get; init; }

    /// <summary>Which steps have no row; empty when all have one.</summary>
    public required string LeftOut { get; init; }

    public required string FindingsTitle { get; init; }

    /// <summary>What is found in the second kitchen and not in the first.</summary>
    public required IReadOnlyList<FindingView> Findings { get; init; }

    /// <summary>What stands under the title: how many, or that there are none.</summary>
    public required string FindingsNote { get; init; }

    /// <summary>Title and what it makes.</summary>
    public required string Facts { get; init; }

    public required string RiseTitle { get; init; }

    public required string RiseNote { get; init; }

    public required string HeatTitle { get; init; }

    public required string HeatNote { get; init; }

    /// <summary>What a form without script must carry over, when other kitchens are picked.</summary>
    public required IReadOnlyList<Asked> Carried { get; init; }

    public required ComparePictures Pictures { get; init; }

    public required WarmthKey Warmth { get; init; }

    public required string CombKey { get; init; }

    /// <summary>Whether bakes are told along one radius until their sections are computed.</summary>
    public required bool AwaitsBakes { get; init; }

    /// <summary>What is being computed of the bakes, and then what it did to their figures; empty where it did nothing.</summary>
    public required IReadOnlyList<string> BakeNotes { get; init; }

    /// <summary>The two as they are typed into a terminal.</summary>
    public required IReadOnlyList<string> CommandLines { get; init; }

    /// <summary>Address of this page, and of the recipe in the second kitchen.</summary>
    public required string Address { get; init; }

    public required string RecipeAddress { get; init; }

    public static CompareView Of(ComparedRecipe recipe, Comparison comparison, Voice voice)
    {
        var (first, second) = (comparison.First, comparison.Second);
        var rows = new CompareRows(comparison, voice);
        var answer = new AnswerWords(comparison, voice);
        var pictures = new ComparePictures(comparison, voice);
        var found = FindingView.All(comparison.FoundInSecondOnly, recipe.Recipe, voice);
        var rising = pictures.Rising is { } step ? StepName.Of(step, voice) : "";
        return new()
        {
            Sentence = Gaps.Cut(voice.Words["compare.sentence"]),
            FirstChoices = ChoicesOf(recipe, first, voice),
            SecondChoices = ChoicesOf(recipe, second, voice),
            FirstName = first.Name,
            SecondName = second.Name,
            FirstKitchen = KitchenWords.Of(first.Asked.Kitchen, second.Asked.Kitchen, voice),
            SecondKitchen = KitchenWords.Of(second.Asked.Kitchen, first.Asked.Kitchen, voice),
            Answer = answer.Answer(),
            Other = answer.OtherParagraph(),
            Turn = TurnOf(recipe, comparison, voice),
            Refusals = comparison.Refusals,
            Rows = rows.All(),
            LeftOut = rows.LeftOut is { Count: > 0 } left ? voice.Say(left.Count == 1 ? "compare.left-out-one" : "compare.left-out", ("steps", left)) : "",
            FindingsTitle = voice.Say("compare.findings.title", ("second", second.Name)),
            Findings = found,
            FindingsNote = found.Count == 0 ? voice.Say("compare.findings.none", ("first", first.Name)) : FindingView.Count(found, voice),
            Facts = recipe.Recipe.Make is { } make
                ? voice.Say("compare.facts", ("title", recipe.Recipe.Title), ("pieces", make.Pieces), ("what", make.What), ("piece", make.PieceMass))
                : recipe.Recipe.Title,
            RiseTitle = voice.Words[comparison.Untouched is null ? "compare.rise.title-two" : "compare.rise.title"],
            RiseNote = voice.Say(comparison.Untouched is null ? "compare.rise.note-two" : "compare.rise.note", ("step", rising), ("first", first.Name), ("second", second.Name)),
            HeatTitle = voice.Words[second.Answer is null ? "compare.heat.title" : "compare.heat.title-free"],
            HeatNote = voice.Say(second.Answer is null ? "compare.heat.note" : "compare.heat.note-free", ("second", second.Name)),
            Carried = comparison.Question.WithSecond("").Over.Items,
            Pictures = pictures,
            Warmth = WarmthKey.Of(voice),
            CombKey = Publishing.Pictures.Keys.CombKey.Draw(),
            AwaitsBakes = comparison.AwaitsBakes,
            BakeNotes = comparison.AwaitsBakes ? [voice.Words["section.compare-progress"]] : [.. Moved(first, voice), .. Moved(second, voice)],
            CommandLines = [first.Asked.CommandLine, second.Asked.CommandLine],
            Address = AddressOf(recipe, comparison.Question),
            RecipeAddress = $"/recipes/{Uri.EscapeDataString(recipe.Name)}{second.Asked.Accepted.Query()}",
        };
    }

    private static IEnumerable<string> Moved(Side side, Voice voice) =>
        from step in side.Rehearsal.Steps
        where step is { AlongRadius: not null, Time: not null } && Show.Duration(step.AlongRadius.Value) != Show.Duration(step.Time.Value.Likely)
        select voice.Say("section.compare-replaced", ("step", StepName.Of(step, voice)), ("kitchen", side.Name), ("time", step.Time!.Value.Likely), ("radius", step.AlongRadius!.Value));

    private static CompareChoice[] ChoicesOf(ComparedRecipe recipe, Side side, Voice voice) =>
    [
        .. recipe.Kitchens.Select(kitchen => new CompareChoice(
            kitchen.Choice,
            kitchen.Choice == CompareQuestion.Home ? voice.Say("compare.home", ("name", kitchen.Name.Length == 0 ? voice.Words["compare.home-unnamed"] : kitchen.Name)) : kitchen.Name,
            kitchen.Choice == side.Choice)),
    ];

    private static CompareLink? TurnOf(ComparedRecipe recipe, Comparison comparison, Voice voice) => comparison.Second.Keep switch
    {
        KeepState.Kept => new(voice.Words["compare.turn.as-written"], AddressOf(recipe, comparison.Question.AsWritten(true))),
        KeepState.AsWritten => new(voice.Words["compare.turn.keep"], AddressOf(recipe, comparison.Question.AsWritten(false))),
        _ => null,
    };

    private static string AddressOf(ComparedRecipe recipe, CompareQuestion question) => $"/recipes/{Uri.EscapeDataString(recipe.Name)}/kitchens{question.Query()}";
}

/// <summary>A kitchen that can be picked.</summary>
public sealed record CompareChoice(string Value, string Name, bool IsChosen);

/// <summary>A way to another question.</summary>
internal sealed record CompareLink(string Words, string Address);
