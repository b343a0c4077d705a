using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>
/// A body that cools or warms toward the air until its volume mean reaches a target. Everything that the lanes share is fixed here on
/// central values before any lane runs: whether one temperature is enough, and the length of a step. So a coefficient solved from
/// measured minutes gives exactly these minutes again.
/// </summary>
internal sealed class Cooling
{
    private const double LumpedBelowBiot = 0.1;
    private const int StepsToTarget = 48;

    private readonly ICoolingMarch march;

    /// <param name="centralStart">Start of the central answer.</param>
    /// <param name="centralCoefficient">Expected h in W/(m² K), before anything was measured.</param>
    /// <param name="cells">Cells from the middle to the surface. With 16 the minutes are within 0.5 % of a fine grid.</param>
    public Cooling(
        Body body,
        CoolingTarget target,
        AirProfile air,
        Temperature centralStart,
        double centralCoefficient,
        int cells = 16)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(centralCoefficient);
        Body = body;
        Target = target;
        Air = air;
        IsLumped = body.Faces is null && body.Biot(centralCoefficient) < LumpedBelowBiot && body.MeltingJoulesPerCubicMetre == 0;
        var first = air.At(Duration.Zero);
        Step = StepFor(body, target, first.Celsius, centralStart.Celsius, body.Faces?.Altogether(centralCoefficient, centralStart, first) ?? centralCoefficient);
        march = IsLumped
            ? new LumpedMarch(body, target, air)
            : new ConductionMarch(body, target, air, GridOf(body, cells), Step);
    }

    public Body Body { get; }

    public CoolingTarget Target { get; }

    public AirProfile Air { get; }

    /// <summary>Whether the inside is taken to be as warm as the surface.</summary>
    public bool IsLumped { get; }

    /// <summary>Length of a step where the inside is followed.</summary>
    public Duration Step { get; }

    /// <summary>When each lane reaches the target, and how warm it is then.</summary>
    public CoolingTimes TimeToReach(CoolingLanes lanes) => march.TimeToReach(lanes, limitMinutes: null);

    /// <summary>Volume means after a time, in °C.</summary>
    public double[] MeanAfter(CoolingLanes lanes, Duration time) => march.MeanAfter(lanes, time);

    /// <summary>How the central lane's volume mean goes, after the start and before so many minutes.</summary>
    public IReadOnlyList<(double Minutes, double Celsius)> Way(CoolingLanes lanes, double minutes) => march.Way(lanes.Central, minutes);

    /// <summary>
    /// The coefficient of each lane with which it reaches the target after the measured minutes. That of the lanes is not read.
    /// </summary>
    public CoefficientFit SolveCoefficient(CoolingLanes lanes, double[] measuredMinutes)
    {
        if (measuredMinutes.Length != lanes.Count || !measuredMinutes.All(minutes => minutes > 0 && double.IsFinite(minutes)))
        {
            throw new ArgumentOutOfRangeException(nameof(measuredMinutes), "Every lane needs measured minutes above nought.");
        }

        // Lanes that differ in nothing but what was expected of them ask one question, and one lane answers it for all.
        if (lanes.Count > 1 && lanes.IsOneBody && !measuredMinutes.AsSpan().ContainsAnyExcept(measuredMinutes[0]))
        {
            return SolveCoefficient(lanes.Central, [measuredMinutes[0]]).ForLanes(lanes.Count);
        }

        var trial = lanes with { WattsPerSquareMetreKelvin = new double[lanes.Count] };
        // A trial that takes eight times the measured minutes is far too slow, whatever its end would be.
        var limits = Array.ConvertAll(measuredMinutes, minutes => 8 * minutes);
        void Evaluate(double[] logCoefficient, double[] logRatio)
        {
            for (var lane = 0; lane < logCoefficient.Length; lane++)
            {
                trial.WattsPerSquareMetreKelvin[lane] = Elementary.Exp(logCoefficient[lane]);
            }

            var times = march.TimeToReach(trial, limits);
            for (var lane = 0; lane < logRatio.Length; lane++)
            {
                logRatio[lane] = times.Minutes[lane] switch
                {
                    double.PositiveInfinity => double.PositiveInfinity,
                    <= 0 => double.NegativeInfinity,
                    var minutes => Elementary.Log(minutes / measuredMinutes[lane]),
                };
            }
        }

        var guess = Array.ConvertAll(lanes.WattsPerSquareMetreKelvin, Elementary.Log);
        var roots = LaneRoots.From(Evaluate, guess, stride: 0.25, rising: false, new(X: 1e-13, F: 1e-11, MaxExpansions: 5));
        return new(Array.ConvertAll(roots, root => Elementary.Exp(root.X)), Array.ConvertAll(roots, root => root.IsFound));
    }

    /// <summary>A layer with a back is followed over all of its thickness, everything else from its middle.</summary>
    public static ConductionGrid GridOf(Body body, int cells) => body.Faces is { HasBack: true }
        ? new(BodyShape.Slab, Length.FromMetres(2 * body.Size.Metres), 2 * cells)
        : new(body.Dimensions, body.Size, cells);

    // A step that depends on central values only, so that all lanes, home and away, share a grid that is fine enough. What melts on the way
    // makes the way longer, and the steps with it.
    private static Duration StepFor(Body body, CoolingTarget target, double air, double start, double coefficient)
    {
        var constant = body.TimeConstantSeconds(coefficient);
        if (target.In(air) is not { } waitedFor || (start - air) / (waitedFor - air) is not (> 1 and var ratio))
        {
            return Duration.FromSeconds(constant / StepsToTarget);
        }

        var expected = Math.Clamp(Elementary.Log(ratio), 0.25, 8);
        return Duration.FromSeconds(constant * expected * body.MeltingFactor(start, waitedFor) / StepsToTarget);
    }
}
