using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;

namespace Doughwright.App.Commands;

/// <summary>Brings the findings of all rooms together: each once, errors first, then in the order of the text.</summary>
internal static class FindingList
{
    public static IReadOnlyList<Finding> Of(string text, params IReadOnlyList<Finding>[] lists)
    {
        var lines = new Lazy<string[]>(() => text.Split('\n'));
        return [.. lists
            .SelectMany(list => list)
            .DistinctBy(finding => (finding.Kind, finding.Place, finding.Position, Telling(finding)))
            .OrderByDescending(finding => finding.Grade)
            .ThenBy(finding => finding.Position.IsKnown ? finding.Position.Line : int.MaxValue)
            .ThenBy(finding => finding.Position.Column)
            .Select(finding => Quoted(finding, lines))];
    }

    /// <summary>All of a recipe and its rehearsal.</summary>
    /// <param name="recipe">As written: a rehearsal may be of one that was asked for otherwise.</param>
    /// <param name="ofTexts">Findings of the texts of recipe and kitchen.</param>
    public static IReadOnlyList<Finding> Of(string text, Recipe recipe, Rehearsal rehearsal, params IReadOnlyList<Finding>[] ofTexts) =>
        Of(text, [.. ofTexts, RecipeChecks.Of(recipe), rehearsal.Formula.Findings, rehearsal.Findings]);

    /// <summary>The same, with what the author has accepted apart. A command that looks at a part of the recipe cannot say that an acceptance is not needed.</summary>
    public static Judgement Judged(string text, Recipe recipe, params IReadOnlyList<Finding>[] lists)
    {
        var judged = Acceptances.JudgePart(Of(text, lists), recipe);
        return judged with { Open = Of(text, judged.Open) };
    }

    /// <summary>One place can have two slips of one kind, each with words of its own. Rooms that find the same may have worked out its figures differently.</summary>
    private static string Telling(Finding finding) =>
        string.Join('\n', finding.Arguments.Where(argument => argument.Value is string).OrderBy(argument => argument.Key, StringComparer.Ordinal).Select(argument => argument.Value));

    /// <summary>Findings of rooms that see no text get their line quoted here. Such a text was understood, so its lines are safe to show.</summary>
    private static Finding Quoted(Finding finding, Lazy<string[]> lines) =>
        finding.Quoted is null && finding.Position.IsKnown && finding.Position.Line <= lines.Value.Length
            ? finding with { Quoted = lines.Value[finding.Position.Line - 1].TrimEnd('\r') }
            : finding;
}
