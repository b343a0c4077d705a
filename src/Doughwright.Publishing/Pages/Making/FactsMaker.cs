using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pages.Measures;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>The facts in the head of a page.</summary>
internal sealed class FactsMaker(PageRun run, Both both, IReadOnlyList<Finding> findings)
{
    private const double HalfAMetre = 0.5;

    private readonly Recipe recipe = run.Here.Recipe;

    /// <param name="total">In fives; null when it cannot be told.</param>
    public IEnumerable<(string Term, string Words)> All(Duration? total)
    {
        if (recipe.Make is { } make)
        {
            yield return Fact("makes", both.Say(make.Pieces == 1 ? "page.makes-one" : "page.makes", ("pieces", make.Pieces), ("what", make.What), ("piece", both.Weight(make.PieceMass))));
        }

        yield return Fact("takes", total is { } time ? both.Say("page.takes", ("time", time)) : both.Voice.Words["not-known"]);
        yield return Fact("hands", both.Voice.Text(run.Here.Hands));
        yield return Fact("written-for", Kitchen(run.Here.AtHome ? recipe.Home : run.Here.Kitchen));
        if (!run.Here.AtHome)
        {
            yield return Fact("tested-in", Kitchen(recipe.Home));
        }

        if (Names("allergens") is { Length: > 0 } contains)
        {
            yield return Fact("contains", contains);
        }

        yield return Fact("standing", Standing());
    }

    private (string, string) Fact(string key, string words) => (both.Voice.Words["page.fact." + key], words);

    private string Kitchen(Kitchen kitchen) => both.Say(
        kitchen.Name.Length == 0 ? "page.kitchen-unnamed" : "page.kitchen",
        ("name", kitchen.Name),
        ("air", both.Degrees(kitchen.Air.At(Duration.Zero))),
        ("altitude", Math.Abs(kitchen.Altitude.Metres) < HalfAMetre ? both.Say("page.at-sea") : both.Say("page.above-sea", ("altitude", both.Altitude(kitchen.Altitude)))),
        ("oven", both.Voice.Oven(kitchen.Oven)));

    /// <summary>How far the author has got: what was measured, and when.</summary>
    private string Standing()
    {
        var seen = recipe.Steps.Where(step => step.Measured is not null).ToArray();
        var days = seen.Select(step => step.Measured!.On).OfType<string>().Distinct().ToArray();
        return seen.Length == 0 ? both.Say("page.standing-idea")
            : days.Length == 0 ? both.Say("page.standing-measured")
            : both.Say("page.standing-measured-on", ("days", days));
    }

    private string Names(string kind) =>
        findings.FirstOrDefault(finding => finding.Kind == kind)?.Arguments.GetValueOrDefault("allergens") as string ?? "";
}
