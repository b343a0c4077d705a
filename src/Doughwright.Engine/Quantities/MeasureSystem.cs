namespace Doughwright.Engine.Quantities;

/// <summary>The measures a person reads in. A setting of its own, apart from the language.</summary>
public enum MeasureSystem
{
    Metric,
    Us,
}
