using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>What a dough consists of, as far as its rise depends on it.</summary>
internal sealed record DoughMatter
{
    /// <summary>Flour as weighed, its own moisture in it.</summary>
    public required Mass Flour { get; init; }

    /// <summary>All water but the flour's own moisture: what carbon dioxide dissolves in.</summary>
    public required Mass Water { get; init; }

    public Mass Salt { get; init; }

    /// <summary>Sugar that yeast can use, as sucrose: puree, honey and malt counted, lactose not.</summary>
    public Mass Sugar { get; init; }

    /// <summary>The yeast as fresh yeast.</summary>
    public required Mass FreshYeast { get; init; }

    public Mass Fat { get; init; }

    /// <summary>Solids that are none of these: of egg, milk, potato.</summary>
    public Mass OtherSolids { get; init; }

    /// <summary>Product of the <see cref="SpiceFactor"/>s of what is kneaded in.</summary>
    public double SpiceFactor { get; init; } = 1;

    /// <summary>
    /// Volume without any gas, mL per 100 g of flour: masses over densities (flour 1.45, salt 2.16, sugar 1.55, yeast 1.08, fat 0.92, other
    /// solids 1.45 g/mL). Gives a gas-free density of 1.23 to 1.28 for lean doughs. Source: dough-density.
    /// </summary>
    public double GasFreeMillilitres =>
        100 * (Flour.Grams / 1.45
            + Water.Grams
            + Salt.Grams / 2.16
            + Sugar.Grams / 1.55
            + FreshYeast.Grams / 1.08
            + Fat.Grams / 0.92
            + OtherSolids.Grams / 1.45) / Flour.Grams;

    public double WaterActivity => Fermentation.WaterActivity.OfDough(Water, Salt, Sugar);
}
