using Doughwright.Engine.Baking.Radial;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Pieces that came out of the oven, and where they have stood since. Immutable; nothing is computed before it is asked for.</summary>
/// <param name="Minutes">In the oven.</param>
/// <param name="Transfer">What the oven gave, against its default.</param>
/// <param name="Pace">By how much a core runs quicker than along one radius.</param>
/// <param name="Core">When they came out, °C.</param>
internal sealed record HotLoaf(OvenPiece Piece, PerLane Minutes, PerLane Transfer, PerLane Pace, PerLane Core)
{
    private const int StepsBefore = 30;

    /// <summary>Where they have stood and gone from, with the seconds of the clock they stood there.</summary>
    private IReadOnlyList<(Rack Rack, double Seconds, PerLane Takes)> Past { get; init; } = [];

    /// <summary>Where they stand; null in the moment they come out.</summary>
    public Rack? On { get; private init; }

    /// <summary>Min since they came there.</summary>
    public PerLane Stood { get; private init; } = PerLane.Same(0, Minutes.Count);

    /// <summary>What is taken from them there, against the default.</summary>
    private PerLane Takes { get; init; }

    /// <summary>How many times as long as along one radius their core needs for whatever it does, over a section, where nobody timed it.</summary>
    public double Slower { get; init; } = 1;

    /// <summary>Whether they have stood nowhere yet.</summary>
    public bool IsFresh => Past.Count == 0 && Stood.Values.All(minutes => minutes == 0);

    /// <summary>Onto a rack; if they stand on such a one they stay there.</summary>
    public HotLoaf To(Rack rack, Stage stage, bool isHome)
    {
        if (On == rack)
        {
            return this;
        }

        var takes = stage.Priors.RackExchange;
        return this with
        {
            Past = On is { } left && Stood.Central > 0 ? [.. Past, (left, Clock(0, Stood.Central), Takes)] : Past,
            On = rack,
            Stood = PerLane.Same(0, Minutes.Count),
            Takes = isHome ? takes : takes * stage.Priors.Elsewhere,
        };
    }

    public HotLoaf After(PerLane minutes) => this with { Stood = Stood + minutes };

    /// <summary>Follows them where they stand, from when they came there.</summary>
    /// <param name="scale">Minutes that are cut into the usual number of steps.</param>
    /// <param name="most">Minutes it is followed for in every lane at least.</param>
    /// <param name="until">Core at which it is over, °C; null for the end.</param>
    /// <param name="airs">About each lane, °C, where it is not the air of where they stand.</param>
    public RackTrace Follow(double scale, double most, PerLane? until = null, PerLane? airs = null)
    {
        var lanes = Piece.Lanes;
        var speeds = Padded(Speed);
        var baking = RackBake.AsFastAs(lanes with { Transfer = Padded(lane => Transfer[lane]) }, speeds);
        double[] Around(PerLane takes) => [.. speeds.Select((speed, lane) => speed * takes[Math.Min(lane, takes.Count - 1)])];
        var longest = Enumerable.Range(0, Minutes.Count).Max(lane => Clock(lane, most));
        var unit = Clock(0, scale);
        var steps = (int)Math.Ceiling(RackTrace.Steps * Numerics.Elementary.Pow(Math.Max(1, longest / unit), 2.0 / 3)) + 1;
        var trace = RackBake.Follow(
            Piece.Grid,
            new(60 * Minutes.Central * Pace.Central, RadialBake.WorkingSteps, RadialBake.WorkingSteps),
            baking,
            [
                .. Past.Select(stay => new RackStay(stay.Rack.Around(baking, Around(stay.Takes)), new(stay.Seconds, StepsBefore, StepsBefore))),
                new RackStay(On!.Around(baking, Around(Takes), airs is { } rooms ? Padded(lane => rooms[lane]) : null), new(unit, RackTrace.Steps, steps)),
            ],
            until is { } core ? Padded(lane => core[lane]) : null);
        return new(trace, this);
    }

    /// <summary>Seconds of the one clock by which all lanes go.</summary>
    public double Clock(int lane, double minutes) => 60 * minutes * Minutes.Central * Pace.Central / (Slower * (Bakes(lane) ? Minutes[lane] : Minutes.Central));

    public double MinutesAt(int lane, double clock) => clock / Clock(lane, 1);

    /// <summary>Whether the bake of a lane came to its end.</summary>
    public bool Bakes(int lane) => double.IsFinite(Minutes[lane]) && Minutes[lane] > 0 && double.IsFinite(Pace[lane]) && Pace[lane] > 0;

    /// <summary>How much faster than the likely lane it comes out, by its own clock.</summary>
    private double Speed(int lane) => Bakes(lane) ? Minutes[lane] * Pace[lane] / (Minutes.Central * Pace.Central) : 1;

    private double[] Padded(Func<int, double> of)
    {
        var padded = new double[Piece.Lanes.Count];
        for (var lane = 0; lane < padded.Length; lane++)
        {
            padded[lane] = of(Math.Min(lane, Minutes.Count - 1));
        }

        return padded;
    }
}
