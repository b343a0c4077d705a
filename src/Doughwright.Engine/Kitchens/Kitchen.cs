using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Kitchens;

/// <summary>Whether a fan moves the oven's air, and whether pieces stand on its hot sole.</summary>
public enum OvenMode
{
    Fan,
    Static,

    /// <summary>A low chamber with still air and a hot sole of stone. Its dial stands for the same as that of a static oven.</summary>
    Deck,
}

/// <summary>Where a recipe is made. Immutable value.</summary>
public sealed record Kitchen
{
    public string Name { get; init; } = "";

    /// <summary>Air over elapsed time.</summary>
    public required AirProfile Air { get; init; }

    /// <summary>Altitude above the sea. Valid -430 to 5,000 m.</summary>
    public Length Altitude { get; init; }

    /// <summary>Water from the tap.</summary>
    public Temperature Tap { get; init; } = Temperature.FromCelsius(12);

    /// <summary>Fridge. Valid -2 to 12 °C.</summary>
    public Temperature Fridge { get; init; } = Temperature.FromCelsius(5);

    public OvenMode Oven { get; init; } = OvenMode.Fan;

    /// <summary>What the oven is like beside its kind.</summary>
    public OvenTraits OvenTraits { get; init; } = OvenTraits.Usual;

    /// <summary>Baking trays there are.</summary>
    public int Trays { get; init; } = 2;

    /// <summary>The smallest step the scale shows.</summary>
    public Mass Scale { get; init; } = Mass.FromGrams(1);

    /// <summary>How warm what stands on the shelf is; null means like the air at the start.</summary>
    public Temperature? Ingredients { get; init; }

    /// <summary>A place kept warm for proofing; null means the room.</summary>
    public Temperature? ProofingPlace { get; init; }

    /// <summary>Vessels that it says it has. None said is not none there.</summary>
    public KitchenVessels Vessels { get; init; } = KitchenVessels.Unsaid;

    /// <summary>Temperature of what stands on the shelf, bowls included.</summary>
    public Temperature Shelf => Ingredients ?? Air.At(Duration.Zero);
}
