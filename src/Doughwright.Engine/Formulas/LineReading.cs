using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>Looks up what a line is: the larder's row, its role, its composition. What stays unclear becomes a finding.</summary>
internal sealed class LineReading(Larder larder, Report report)
{
    public PartLine Read(Component component, Line line)
    {
        var match = larder.Find(line.Name, line.Conditions);
        var raw = RawRow(match);
        // A weighing says that it was cooked: the raw row is all that is needed then.
        var ingredient = match.Ingredient ?? (line.Weighed is null ? null : raw);
        if (ingredient is null || match.Kind == MatchKind.ReadAs)
        {
            Say(component, line, match);
        }

        var role = RoleOf(component, line, ingredient, match);
        var composition = CompositionOf(component, line, ingredient, raw);
        return new(line, MassOf(component, line), role, ingredient, composition, null, raw);
    }

    /// <summary>The mass as written; nothing when it is missing or below zero, which is said.</summary>
    public Mass MassOf(Component component, Line line)
    {
        if (line.Mass is not { } mass)
        {
            // A measure that is not known has been told where it is read.
            if (line.Household is null)
            {
                report.About(component, line, "mass-not-said", Grade.Error, ("name", line.Name));
            }

            return Mass.Zero;
        }

        if (mass < Mass.Zero)
        {
            report.About(component, line, "mass-below-zero", Grade.Error, ("name", line.Name), ("mass", mass));
            return Mass.Zero;
        }

        return mass;
    }

    private Ingredient? RawRow(LarderMatch match)
    {
        if (match.Ingredient is { } row)
        {
            // What is only peeled or trimmed is raw still: a fruit that is cooked down has no row of its own as cooked.
            return larder.RawOf(row) ?? (larder.PreparationOf(row) is { Step: not PreparationStep.Cook } ? row : null);
        }

        return match.Kind == MatchKind.RawOrCookedNotSaid
            ? match.Candidates.Select(larder.RawOf).FirstOrDefault(raw => raw is not null && match.Candidates.Contains(raw))
            : null;
    }

    private void Say(Component component, Line line, LarderMatch match)
    {
        var candidates = string.Join(", ", match.Candidates.Select(row => row.Name));
        switch (match.Kind)
        {
            case MatchKind.RawOrCookedNotSaid:
                report.About(component, line, "raw-or-cooked-not-said", Grade.Warning, ("name", line.Name), ("candidates", candidates));
                break;
            case MatchKind.NotClear:
                report.About(component, line, "ingredient-not-clear", Grade.Warning, ("name", line.Name), ("candidates", candidates), Deciding(line));
                break;
            case MatchKind.ReadAs:
                report.About(component, line, "ingredient-read-as", Grade.Hint, ("name", line.Name), ("readAs", match.Ingredient!.Name));
                break;
            case MatchKind.Unknown when match.Nearest.Count > 0:
                var nearest = string.Join(", ", match.Nearest.Distinct());
                report.About(component, line, "ingredient-not-known", Grade.Warning, ("name", line.Name), ("nearest", nearest));
                break;
            default:
                report.About(component, line, "ingredient-not-known-at-all", Grade.Warning, ("name", line.Name));
                break;
        }
    }

    private (string, object) Deciding(Line line) =>
        ("regions", RegionCodes.Deciding(larder, there => there.Find(line.Name, line.Conditions).Ingredient is not null));

    private Role? RoleOf(Component component, Line line, Ingredient? ingredient, LarderMatch match)
    {
        if (line.CountsAs is { } said)
        {
            if (RoleName.Find(said) is { } named)
            {
                return named;
            }

            report.About(component, line, "role-not-known", Grade.Warning, ("name", line.Name), ("said", said));
        }

        return ingredient?.Role ?? match.Role;
    }

    private Composition CompositionOf(Component component, Line line, Ingredient? ingredient, Ingredient? raw)
    {
        var table = ingredient?.Composition ?? Composition.Unknown;
        if (line.Weighed is not { } weighed)
        {
            return table;
        }

        if (raw is null)
        {
            report.About(component, line, "weighing-not-used", Grade.Warning, ("name", line.Name));
            return table;
        }

        if (SolidsBalance.Cooked(raw.Composition, weighed.RawPeeled, weighed.Cooked) is { } cooked)
        {
            return cooked;
        }

        (string, object)[] arguments = [("name", line.Name), ("raw", weighed.RawPeeled), ("cooked", weighed.Cooked)];
        report.About(component, line, "weighing-not-possible", Grade.Warning, arguments);
        return table;
    }
}
