using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Holds the salt of a part: what a salted butter brings, the salt itself gives.</summary>
internal static class SaltHold
{
    // In percent of flour. Less cannot be tasted, and every ingredient holds a trace.
    private const double WorthHolding = 0.1;

    public static IReadOnlyList<LineEdit> Of(ComponentFormula component, IReadOnlyList<LineEdit> edits, Mass flour, Mass scale)
    {
        double? more = 0;
        foreach (var edit in edits)
        {
            var before = component.Lines.First(line => line.Source.Id == edit.Line);
            var after = edit.Swap is { } swap ? swap.By?.Composition ?? before.Composition : before.Composition;
            more += ((edit.Mass.Grams * after.Salt) - (before.Mass.Grams * before.Composition.Salt)) / 100;
        }

        var salt = component.Lines
            .Where(line => line is { Role: Role.Salt, Source.Uses: null, Composition.Salt: > 0 } && edits.All(edit => edit.Line != line.Source.Id))
            .MaxBy(line => line.Mass.Grams);
        if (salt is null || more is not { } grams || flour <= Mass.Zero || Math.Abs(grams / flour.Grams * 100) < WorthHolding)
        {
            return [];
        }

        var held = Math.Max(0, salt.Mass.Grams - (grams / (salt.Composition.Salt!.Value / 100)));
        return [new(salt.Source.Id, ScaleStep.Round(Mass.FromGrams(held), scale), null)];
    }
}
