using Doughwright.Engine.Formulas;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Builds portions from the lines of a component.</summary>
internal static class Matter
{
    private static readonly Temperature PropertiesAt = Temperature.FromCelsius(25);

    /// <summary>The part of a mix that a line is. A component counts with the heat capacity of its own portion.</summary>
    public static MixPart PartOf(LineFormula line, IReadOnlyDictionary<string, Portion> parts)
    {
        if (line.UsesComponent is { } used && parts.TryGetValue(used, out var portion) && portion.Mass > Mass.Zero)
        {
            var share = line.Mass / portion.Mass;
            return new(line.Id, line.Mass, SpecificHeat.FromJoulesPerGramKelvin(portion.JoulesPerKelvin / portion.Mass.Grams), portion.MeltingFat * share);
        }

        return new(line.Id, line.Mass, SpecificHeatOf(line), MeltingFatOf(line));
    }

    /// <summary>
    /// Whether it is known how much heat a line holds. Where it is not, nothing that depends on it is told: of a part that weighs nothing, say,
    /// nobody can take 100 g.
    /// </summary>
    public static bool IsHeatKnown(LineFormula line, IReadOnlyDictionary<string, Portion> parts) => line.Mass == Mass.Zero
        || (line.UsesComponent is { } used && parts.TryGetValue(used, out var portion) ? portion.Mass > Mass.Zero : KnownHeat(line) is not null);

    /// <summary>A handbook's figure where there is one, else from the composition. Only for show where <see cref="IsHeatKnown"/> says no.</summary>
    public static SpecificHeat SpecificHeatOf(LineFormula line) => KnownHeat(line) ?? DefaultHeats.Water;

    private static SpecificHeat? KnownHeat(LineFormula line) =>
        line.Ingredient?.HandbookSpecificHeat ?? ThermalProperties.Of(line.Composition, PropertiesAt)?.SpecificHeat;

    public static Mass MeltingFatOf(LineFormula line) =>
        line.Ingredient is { MeltsAsButter: true } && line.Composition.Fat is { } fat ? line.Mass * (fat / 100) : Mass.Zero;

    /// <summary>A component's lines put together, as warm as <paramref name="celsius"/> says.</summary>
    public static Portion Of(ComponentFormula component, IReadOnlyList<MixPart> parts, PerLane? celsius) => new()
    {
        Mass = component.Mass,
        Composition = SmallUnknowns.Of(component),
        JoulesPerKelvin = parts.Sum(part => part.Mass * part.SpecificHeat),
        MeltingFat = Mass.FromGrams(parts.Sum(part => part.MeltingFat.Grams)),
        Celsius = celsius,
    };

    /// <summary>What a bowl holds, mixed: the whole component, or as much of it as has gone in so far.</summary>
    public static Portion Of(ComponentFormula component, Bowl bowl, PerLane? celsius)
    {
        var whole = Of(component, bowl.Balance.Parts, celsius);
        if (bowl.Lines.Count == component.Lines.Count && !MixLines.GoesOn(bowl.Lines, component))
        {
            return whole;
        }

        return whole with
        {
            Mass = Mass.FromGrams(bowl.Lines.Sum(line => line.Mass.Grams)),
            Composition = Ingredients.Composition.Mix([.. bowl.Lines.Select(line => (line.Mass.Grams, line.Composition))]),
        };
    }

    /// <summary>A component nobody has touched yet: its lines side by side, at their mean warmth. Nothing has no warmth.</summary>
    public static Portion Raw(string component, Stage stage)
    {
        var formula = stage.Component(component);
        var parts = formula.Lines.Select(line => PartOf(line, new Dictionary<string, Portion>())).ToList();
        var heat = parts.Zip(formula.Lines, (part, line) => part.Mass * part.SpecificHeat * stage.WarmthOf(component, line.Source)).Sum();
        var capacity = parts.Sum(part => part.Mass * part.SpecificHeat);
        return Of(formula, parts, capacity > 0 ? PerLane.Same(heat / capacity, stage.Lanes) : null);
    }
}
