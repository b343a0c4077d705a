namespace Doughwright.Engine.Quantities;

/// <summary>What a written quantity measures.</summary>
public enum QuantityKind
{
    Mass,
    Temperature,
    Duration,
    Length,
    Volume,
    Percent,
    Power,
}
