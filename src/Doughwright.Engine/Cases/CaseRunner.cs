using Doughwright.Engine.Numerics;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases;

/// <summary>Runs published cases with the models and the priors of a rehearsal, and scores the answers.</summary>
public static class CaseRunner
{
    /// <summary>A hair for the rounding of sums: an answer at the very edge of a tolerance lies within it.</summary>
    private const double Hair = 1e-9;

    /// <summary>Runs a case. A series that no model answers comes back with the reason.</summary>
    public static CaseResult Run(PublishedCase published) => new(published, [.. published.Series.Select(series => Run(published, series))]);

    private static SeriesResult Run(PublishedCase published, CaseSeries series)
    {
        CaseAnswer answer;
        try
        {
            answer = published.Model.Answer(series);
        }
        catch (ArgumentOutOfRangeException beyond)
        {
            // A published trial may lie where an equation ends. Then that is the answer, and the other cases are run.
            answer = CaseAnswer.Refused(CaseFaults.BeyondModel, Grade.Warning, ("quantity", series.Quantity), ("reason", ReasonOf(beyond)));
        }

        if (answer.Refusal is { } refusal)
        {
            return new() { Series = series, Refusal = refusal };
        }

        if (answer.Lanes.Any(lanes => lanes.Any(double.IsNaN)))
        {
            return new() { Series = series, Refusal = CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity)).Refusal };
        }

        PointResult[] points = [.. series.Points.Zip(answer.Lanes, (point, lanes) => Point(series, point, lanes))];
        var errors = points.Select(point => point.Error).ToArray();
        var known = errors.All(error => error is not null);
        return new()
        {
            Series = series,
            Points = points,
            RootMeanSquare = known ? Math.Sqrt(errors.Sum(error => error!.Value * error.Value) / errors.Length) : null,
            Bias = known ? errors.Sum(error => error!.Value) / errors.Length : null,
            MaxError = known ? errors.Max(error => Math.Abs(error!.Value)) : null,
            Within = points.All(point => point.Within),
        };
    }

    /// <summary>What the equation said, without the name of a parameter and the value that the runtime puts behind it.</summary>
    private static string ReasonOf(ArgumentOutOfRangeException beyond) => beyond.Message.Split(" (Parameter")[0].Split('\n')[0].TrimEnd('.');

    private static PointResult Point(CaseSeries series, CasePoint measured, double[] lanes)
    {
        var shown = Array.ConvertAll(lanes, lane => double.IsFinite(lane) ? series.Shown.FromBase(lane) : lane);
        var spread = Spread.OfLanes(shown);
        var ranged = shown.AsSpan().ContainsAnyExcept(shown[0]);
        var reached = double.IsFinite(spread.Central);
        return new()
        {
            Measured = measured,
            Computed = reached ? spread.Central : null,
            Low = ranged && double.IsFinite(spread.Low) ? spread.Low : null,
            High = ranged && double.IsFinite(spread.High) ? spread.High : null,
            Within = reached && Math.Abs(measured.ErrorOf(spread.Central)) <= measured.Tolerance * (1 + Hair),
            InRange = ranged ? spread.Low <= measured.High && spread.High >= measured.Low : null,
        };
    }
}
