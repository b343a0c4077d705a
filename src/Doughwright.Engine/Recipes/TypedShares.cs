using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>
/// Lines that are typed as a percentage: "12.5 %" of the line that the part names as its base, or else of the part's own flour. The mass follows from it,
/// and a mass that no longer does is what holds.
/// </summary>
internal static class TypedShares
{
    /// <summary>A mass that was worked out in another order may differ in its last digits.</summary>
    private const double SameMass = 1e-9;

    /// <summary>What the percentages of a part are of; null when nothing weighed in it says so.</summary>
    public static Mass? BaseOf(Component component, Larder larder)
    {
        if (component.Base is { } basis)
        {
            return component.Lines.FirstOrDefault(line => line.Id == basis) is { Share: null, Mass: { } named } ? named : null;
        }

        var flours = component.Lines.Where(line => IsFlour(line, larder)).ToArray();
        var weighed = flours.Where(line => line.Share is null).Aggregate(Mass.Zero, (sum, line) => sum + (line.Mass ?? Mass.Zero));
        var rest = 1 - flours.Sum(line => line.Share?.Fraction ?? 0);
        // Where a flour is a share of all flour, the weighed ones are the rest of it.
        return weighed > Mass.Zero && rest > 0 ? weighed * (1 / rest) : null;
    }

    /// <summary>The part with the masses that its percentages give; a percentage of nothing leaves its line without a mass.</summary>
    public static Component Settled(Component component, Larder larder)
    {
        if (component.Lines.All(line => line.Share is null))
        {
            return component;
        }

        var basis = BaseOf(component, larder);
        return component with { Lines = [.. component.Lines.Select(line => line.Share is { } share ? line with { Mass = basis * share.Fraction } : line)] };
    }

    /// <summary>The part without the percentages that its masses no longer follow: somebody rounded or swapped since they were typed.</summary>
    public static Component Held(Component component, Larder larder)
    {
        while (component.Lines.Any(line => line.Share is not null))
        {
            var basis = BaseOf(component, larder);
            var gone = component.Lines.Where(line => line.Share is { } share && !Says(share, basis, line.Mass)).ToArray();
            if (gone.Length == 0)
            {
                break;
            }

            // What is weighed now can be part of the base of the others.
            component = component with { Lines = [.. component.Lines.Select(line => gone.Contains(line) ? line with { Share = null } : line)] };
        }

        return component;
    }

    private static bool Says(Percent share, Mass? basis, Mass? mass) =>
        basis is { } whole && mass is { } part && Math.Abs((whole * share.Fraction / part) - 1) < SameMass;

    private static bool IsFlour(Line line, Larder larder) => line.Uses is null
        && (line.CountsAs is { } said && RoleName.Find(said) is { } named ? named : larder.Find(line.Name, line.Conditions).Role) == Role.Flour;
}
