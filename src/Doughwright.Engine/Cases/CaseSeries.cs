namespace Doughwright.Engine.Cases;

/// <summary>Figures of one quantity: measured at one point, or along time, temperature or altitude.</summary>
public sealed record CaseSeries
{
    /// <summary>What was measured, a word of the kind's list: "core temperature".</summary>
    public required string Quantity { get; init; }

    /// <summary>Unit of the figures as shown: "°C", "min"; empty for a plain number.</summary>
    public required string Unit { get; init; }

    /// <summary>What it was measured along: "time"; empty for a single figure.</summary>
    public required string Along { get; init; }

    public required string AlongUnit { get; init; }

    public required IReadOnlyList<CasePoint> Points { get; init; }

    /// <summary>Why the tolerance is what it is, as written; null where every figure is a range of its own.</summary>
    public string? Because { get; init; }

    internal CaseQuantity Of { get; init; } = null!;

    internal FigureUnit Shown { get; init; } = null!;

    internal FigureUnit? AlongShown { get; init; }

    /// <summary>What figures that are given against another are given against, in the base of what they were measured along.</summary>
    internal double? Reference { get; init; }
}

/// <summary>One measured figure, or the range that the source gives for it.</summary>
/// <param name="At">Where along the series, in its unit; null for a single figure.</param>
/// <param name="Low">Lower end of the range; the figure itself where there is none.</param>
/// <param name="High">Upper end.</param>
/// <param name="Tolerance">How far off a right answer may be, either way; from the ends of a range on.</param>
public sealed record CasePoint(double? At, double Low, double High, double Tolerance)
{
    /// <summary>Whether the source gives a range.</summary>
    public bool IsRange => High > Low;

    /// <summary>The figure, or the middle of its range.</summary>
    public double Value => (Low + High) / 2;

    /// <summary>Computed less measured: nought within the range of the source, and from its nearer end on outside.</summary>
    public double ErrorOf(double computed) => computed < Low ? computed - Low : computed > High ? computed - High : 0;

    /// <summary>The place in the base of its dimension, as the models take it.</summary>
    internal double Place { get; init; }
}
