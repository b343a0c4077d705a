using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases;

/// <summary>A case held against the models.</summary>
public sealed record CaseResult(PublishedCase Case, IReadOnlyList<SeriesResult> Series);

/// <summary>A series held against the models. Figures are in the unit of the series.</summary>
public sealed record SeriesResult
{
    public required CaseSeries Series { get; init; }

    /// <summary>Point by point; empty when it cannot be run.</summary>
    public IReadOnlyList<PointResult> Points { get; init; } = [];

    /// <summary>Why it cannot be run; null when it can.</summary>
    public Finding? Refusal { get; init; }

    /// <summary>Root of the mean square of the errors; null when it was not run, or when something measured is never reached.</summary>
    public double? RootMeanSquare { get; init; }

    /// <summary>Mean of computed less measured; null as above.</summary>
    public double? Bias { get; init; }

    /// <summary>The largest error either way; null as above.</summary>
    public double? MaxError { get; init; }

    /// <summary>Whether every point lies within its tolerance; null when it was not run.</summary>
    public bool? Within { get; init; }

    /// <summary>How many points lie within their tolerance.</summary>
    public int PointsWithin => Points.Count(point => point.Within);

    /// <summary>Points whose answer has a range.</summary>
    public int PointsWithRange => Points.Count(point => point.InRange is not null);

    /// <summary>Points whose measured figure lies in the range of the answer.</summary>
    public int PointsInRange => Points.Count(point => point.InRange == true);
}

/// <summary>One measured figure beside the computed one, in the unit of the series.</summary>
public sealed record PointResult
{
    public required CasePoint Measured { get; init; }

    /// <summary>The likely answer; null where the models say that it is never reached.</summary>
    public double? Computed { get; init; }

    /// <summary>The 10th percentile of the lanes; null where nothing in the question is uncertain to the models.</summary>
    public double? Low { get; init; }

    /// <summary>The 90th percentile; null as above, and where the range is open.</summary>
    public double? High { get; init; }

    /// <summary>Computed less measured; null where it is never reached.</summary>
    public double? Error => Computed is { } computed ? Measured.ErrorOf(computed) : null;

    /// <summary>Whether the likely answer lies within the tolerance.</summary>
    public required bool Within { get; init; }

    /// <summary>Whether the measured figure, or a part of its range, lies in the range of the answer; null where that has none.</summary>
    public bool? InRange { get; init; }
}
