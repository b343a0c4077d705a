using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>One way to have a dough stand at a temperature: how much water of what warmth, and what comes of it.</summary>
public sealed record PlaceAnswer
{
    public required PlaceKind Kind { get; init; }

    /// <summary>Whether the place holds the temperature asked for, as a mean over the step. If not, the rest tells the nearest it comes.</summary>
    public required bool Reaches { get; init; }

    /// <summary>Water in all.</summary>
    public required Mass Water { get; init; }

    /// <summary>How warm it is when it goes in, each time.</summary>
    public required Temperature WaterTemperature { get; init; }

    /// <summary>How long before the dough the water goes in.</summary>
    public required Duration Lead { get; init; }

    /// <summary>After the dough went in, fresh water so often; null for never.</summary>
    public required Duration? RenewEvery { get; init; }

    /// <summary>How often that is in the likely time of the step in this place.</summary>
    public required int Renewals { get; init; }

    /// <summary>Mean of what the dough stands in: air, or the water of a bath.</summary>
    public required Estimate<Temperature> Mean { get; init; }

    /// <summary>The dough at the end of the likely time.</summary>
    public required Estimate<Temperature> DoughEnd { get; init; }

    /// <summary>Mean of the dough over the likely time.</summary>
    public required Estimate<Temperature> DoughMean { get; init; }

    /// <summary>How long of the likely time the place is within 1 K of what was asked.</summary>
    public required Duration PlaceWithin { get; init; }

    /// <summary>The same for the dough itself.</summary>
    public required Duration DoughWithin { get; init; }

    /// <summary>How long the step takes there; null when it never ends.</summary>
    public required Estimate<Duration>? Time { get; init; }

    /// <summary>How it goes, from the first water on.</summary>
    public required IReadOnlyList<PlacePoint> Course { get; init; }

    public required IReadOnlyList<PlaceCaution> Cautions { get; init; }

    /// <summary>The assumed figures behind it, each with its range and source.</summary>
    public required IReadOnlyList<PlaceFigure> RestsOn { get; init; }
}

/// <summary>A moment of a warm place.</summary>
/// <param name="After">After the dough went in; below nought before it.</param>
/// <param name="Around">What the dough stands in.</param>
/// <param name="Dough">Null before the dough went in.</param>
public readonly record struct PlacePoint(
    Duration After, Temperature Room, Temperature Water, Estimate<Temperature> Around, Estimate<Temperature>? Dough);

/// <summary>A figure that was assumed.</summary>
/// <param name="Name">Key of its words: "place-walls".</param>
/// <param name="Value">Likely value with its range, in the unit.</param>
/// <param name="Source">Id of the source.</param>
public sealed record PlaceFigure(string Name, Estimate<double> Value, string Unit, string Source);
