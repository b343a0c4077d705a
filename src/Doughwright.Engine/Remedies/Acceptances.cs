using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Remedies;

/// <summary>
/// Accepting a finding with a reason. It holds as long as its place stands as it stood; then it has expired and the finding is back. Nothing
/// that can hurt somebody, and no error, is accepted away.
/// </summary>
public static class Acceptances
{
    /// <summary>Why a finding cannot be accepted, as the kind of finding that says so; null when it can be.</summary>
    public static string? Refusal(Finding finding) => finding.Safety ? SafetyKind : finding.Grade == Grade.Error || finding.NotUnderstood ? ErrorKind : null;

    private const string SafetyKind = "safety-not-acceptable";
    private const string ErrorKind = "error-not-acceptable";

    /// <summary>The recipe with a finding accepted. An older acceptance of the same finding is replaced.</summary>
    /// <exception cref="ArgumentException">It cannot be accepted, or there is no reason.</exception>
    public static Recipe Accept(Recipe recipe, Finding finding, string reason)
    {
        if (Refusal(finding) is { } refusal)
        {
            throw new ArgumentException($"The finding cannot be accepted: {refusal}.", nameof(finding));
        }

        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        var accepted = new Accepted(finding.Id, string.Join(' ', reason.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), PlaceMark.Of(recipe, finding.Place), Position.None);
        return recipe with { Accepted = [.. recipe.Accepted.Where(one => one.FindingId != finding.Id), accepted] };
    }

    /// <summary>Sorts findings into what stands and what is accepted, and says of every acceptance that does not hold why.</summary>
    /// <param name="findings">All that can be found about the recipe as its author made it.</param>
    public static Judgement Judge(IReadOnlyList<Finding> findings, Recipe recipe) => Judge(findings, recipe, isWhole: true);

    /// <summary>As <see cref="Judge(IReadOnlyList{Finding}, Recipe)"/>, of some of the findings: what is accepted and not among them may stand among the others.</summary>
    public static Judgement JudgePart(IReadOnlyList<Finding> findings, Recipe recipe) => Judge(findings, recipe, isWhole: false);

    private static Judgement Judge(IReadOnlyList<Finding> findings, Recipe recipe, bool isWhole)
    {
        if (recipe.Accepted.Count == 0)
        {
            return new(findings, []);
        }

        var accepted = new List<(Finding, string)>();
        var open = findings.ToList();
        foreach (var one in recipe.Accepted)
        {
            var found = findings.FirstOrDefault(finding => finding.Id == one.FindingId);
            if (found is null)
            {
                if (!isWhole)
                {
                    continue;
                }

                open.Add(About(one, "acceptance-not-needed", Grade.Hint));
            }
            else if (Refusal(found) is { } refusal)
            {
                open.Add(refusal == SafetyKind
                    ? About(one, "safety-not-acceptable", Grade.Hint)
                    : About(one, "error-not-acceptable", Grade.Hint));
            }
            else if (PlaceMark.Of(recipe, found.Place) != one.PlaceMark)
            {
                open.Add(About(one, "acceptance-expired", Grade.Hint));
            }
            else
            {
                open.RemoveAll(finding => finding.Id == one.FindingId);
                accepted.Add((found, one.Reason));
            }
        }

        return new(open, accepted);
    }

    private static Finding About(Accepted one, string kind, Grade grade) => new()
    {
        Kind = kind,
        Grade = grade,
        Place = $"accepted.{Slug.Of(one.FindingId)}",
        Position = one.Position,
        Arguments = new Dictionary<string, object> { ["finding"] = one.FindingId, ["reason"] = one.Reason },
    };
}
