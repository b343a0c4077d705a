using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>What a body consists of: lines as in a recipe, or the figures that the source states.</summary>
/// <param name="Properties">Without gas, at 30 °C.</param>
internal sealed record CaseMatter(ThermalProperties Properties, double MeltingFatShare, bool HoldsFlour)
{
    public const string Dough = "dough";
    public const string Heat = "specific heat";
    public const string Density = "density";
    public const string Conductivity = "conductivity";

    public static IReadOnlyList<string> Keys { get; } = [Dough, Heat, Density, Conductivity];

    public static CaseMatter? Read(CaseConditions conditions)
    {
        if (conditions.Clash(Dough, Heat, Density, Conductivity))
        {
            return null;
        }

        if (conditions.Has(Dough))
        {
            return conditions.MayLines(Dough, ComponentKind.Dough) is { } part ? OfLines(part) : null;
        }

        if (!conditions.Has(Heat) && !conditions.Has(Density))
        {
            conditions.TellOneOf(Dough, Heat);
            return null;
        }

        var heat = conditions.Need(Heat, Dimension.SpecificHeat);
        var density = conditions.Need(Density, Dimension.Density);
        var conductivity = conditions.Need(Conductivity, Dimension.Conductivity);
        return heat is null || density is null || conductivity is null ? null : new(
            new(
                SpecificHeat.FromJoulesPerGramKelvin(heat.Value),
                Engine.Quantities.Density.FromKilogramsPerCubicMetre(density.Value),
                Engine.Quantities.Conductivity.FromWattsPerMetreKelvin(conductivity.Value)),
            0,
            false);
    }

    /// <summary>As a rehearsal sees it: the heat of its lines, handbook figures included; the rest from its composition.</summary>
    private static CaseMatter? OfLines(Component part)
    {
        var (portion, component) = DoughOf.Portion(part);
        if (portion.Mass <= Mass.Zero || ThermalProperties.Of(portion.Composition, Temperature.FromCelsius(30)) is not { } known)
        {
            return null;
        }

        var properties = known with { SpecificHeat = SpecificHeat.FromJoulesPerGramKelvin(portion.JoulesPerKelvin / portion.Mass.Grams) };
        return new(properties, portion.MeltingFat / portion.Mass, component.Flour > Mass.Zero);
    }
}
