namespace Doughwright.Engine.Baking.Sections;

/// <summary>
/// A piece on its way through the oven, step by step: backward differences of second order over steps of any length, one Euler step to
/// start with, each step solved by straightening it again and again about the last guess.
/// </summary>
/// <remarks>
/// The heat and the water that a step hands on are those that its flows have brought, to the last digit, not those that its temperatures
/// stand for: an iteration that ends early loses nothing, and the next step makes it good. So heat is conserved at any tolerance.
/// </remarks>
internal sealed class SectionMarch
{
    /// <summary>A guess moves by no more in one iteration, so that it stays where the laws hold.</summary>
    private const double MostKelvins = 20;

    private const double LeastCelsius = 0.01;
    private const double MostCelsius = 370;

    /// <summary>What a change of water counts for beside one of temperature, in K per kg on a kg.</summary>
    private const double KelvinsPerWater = 30;

    private const int MostIterations = 14;

    private readonly SectionEquations equations;
    private readonly CylinderGrid grid;
    private readonly BakingPiece piece;
    private readonly double tolerance;
    private readonly SectionState before;
    private readonly SectionState known;
    private readonly SectionState guess;
    private readonly UnderHearth.Run? hearth;
    private double lastStep;
    private double lastRise;

    /// <param name="tolerance">Change at which a step counts as solved, in K.</param>
    public SectionMarch(BakingPiece piece, CylinderGrid grid, double tolerance = 0.02)
    {
        hearth = piece.Hearth is { } under ? new(under) : null;
        piece = hearth is null ? piece : piece with { Bottom = hearth.Face };
        (this.piece, this.grid, this.tolerance) = (piece, grid, tolerance);
        equations = new(piece, grid);
        State = new(grid.Cells);
        (before, known, guess) = (new(grid.Cells), new(grid.Cells), new(grid.Cells));
        Array.Fill(State.Celsius, piece.Start.Celsius);
        Array.Fill(State.Water, piece.Water);
        Array.Fill(State.Held, piece.Water);
        Array.Fill(State.Heat, equations.HeatOf(piece.Start.Celsius, piece.Water));
    }

    public BakingPiece Piece => piece;

    public SectionState State { get; }

    /// <summary>Since the piece went in.</summary>
    public double Seconds { get; private set; }

    /// <summary>Heat taken in so far less what went off with vapour, in J, summed as the steps weigh it.</summary>
    public double Received { get; private set; }

    /// <summary>Heat exchanged so far in either direction, in J.</summary>
    public double Exchanged { get; private set; }

    /// <summary>Linear systems solved so far.</summary>
    public int Solutions { get; private set; }

    /// <summary>Heat in the piece against 0 °C, in J.</summary>
    public double Heat => Sum(State.Heat);

    /// <summary>Mean over the piece, kg per kg of dry matter.</summary>
    public double MeanWater => Sum(State.Held) / grid.CubicMetres;

    /// <summary>Share of the dough's mass that is gone.</summary>
    public double Loss => (piece.Water - MeanWater) / (1 + piece.Water);

    public double CoreCelsius(double height) => grid.OnAxis(State.Celsius, height);

    public double SideCelsius => Surface(piece.Side, grid.At(grid.Rings - 1, grid.Layers / 2), grid.Widths[^1]);

    public double TopCelsius => Surface(piece.Top, grid.At(0, grid.Layers - 1), grid.Heights[^1]);

    public double BottomCelsius => Surface(piece.Bottom, 0, grid.Heights[0]);

    /// <summary>Takes a step. When it cannot be solved nothing is changed, and a shorter one has to be tried.</summary>
    /// <returns>Whether it was solved.</returns>
    public bool Step(double seconds)
    {
        var ratio = lastStep > 0 ? seconds / lastStep : 0;
        var rate = (1 + (2 * ratio)) / (1 + ratio) / seconds;
        var (newer, older) = ((1 + ratio) / seconds, ratio * ratio / (1 + ratio) / seconds);
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            known.Heat[cell] = (newer * State.Heat[cell]) - (older * before.Heat[cell]);
            known.Held[cell] = (newer * State.Held[cell]) - (older * before.Held[cell]);
        }

        GuessOn(ratio);
        hearth?.Look(ratio);
        equations.Place(State);
        var end = Seconds + seconds;
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            equations.Straighten(guess, rate, known, end);
            equations.Matrix.Solve();
            Solutions++;
            var change = Change(equations.Matrix.Right);
            if (double.IsNaN(change))
            {
                return false;
            }

            if (change <= tolerance)
            {
                Settle(seconds, rate, older / rate);
                return true;
            }

            Move(equations.Matrix.Right);
        }

        return false;
    }

    /// <summary>Straight on from the last step, which a step solves in fewer rounds than from where it stands.</summary>
    private void GuessOn(double ratio)
    {
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            var (celsius, water) = (State.Celsius[cell], State.Water[cell]);
            guess.Celsius[cell] = Math.Clamp(celsius + Math.Clamp(ratio * (celsius - before.Celsius[cell]), -MostKelvins, MostKelvins), LeastCelsius, MostCelsius);
            guess.Water[cell] = Math.Max(water + (ratio * (water - before.Water[cell])), water / 10);
        }
    }

    private static double Change(ReadOnlySpan<double> corrections)
    {
        var most = 0.0;
        for (var row = 0; row < corrections.Length; row += 2)
        {
            most = Math.Max(most, Math.Max(Math.Abs(corrections[row]), KelvinsPerWater * Math.Abs(corrections[row + 1])));
        }

        return most;
    }

    private void Move(ReadOnlySpan<double> corrections)
    {
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            var moved = guess.Celsius[cell] + Math.Clamp(corrections[2 * cell], -MostKelvins, MostKelvins);
            guess.Celsius[cell] = Math.Clamp(moved, LeastCelsius, MostCelsius);
            var water = guess.Water[cell] + corrections[(2 * cell) + 1];
            // Crumb dries out in steps of a tenth rather than beyond nothing.
            guess.Water[cell] = water > 0 ? water : guess.Water[cell] / 10;
        }
    }

    private void Settle(double seconds, double rate, double carried)
    {
        ReadOnlySpan<double> corrections = equations.Matrix.Right;
        var (taken, given) = equations.Flows.After(corrections);
        State.CopyTo(before);
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            var (celsius, water) = (guess.Celsius[cell], guess.Water[cell]);
            var (perKelvin, perWater) = equations.HeatSlopes(celsius, water);
            State.Heat[cell] = equations.HeatOf(celsius, water) + (perKelvin * corrections[2 * cell]) + (perWater * corrections[(2 * cell) + 1]);
            State.Held[cell] = water + corrections[(2 * cell) + 1];
        }

        Move(corrections);
        guess.Celsius.CopyTo(State.Celsius, 0);
        guess.Water.CopyTo(State.Water, 0);
        // E' = E + carried (E - E'') + net/rate, so what is received is summed in the same way.
        lastRise = (carried * lastRise) + ((taken - given) / rate);
        Received += lastRise;
        Exchanged += (Math.Abs(taken) + Math.Abs(given)) * seconds;
        Seconds += seconds;
        hearth?.Advance(MeanOfUnderSide(), Seconds, seconds, lastStep > 0 ? seconds / lastStep : 0);
        lastStep = seconds;
    }

    private double MeanOfUnderSide()
    {
        var sum = 0.0;
        for (var ring = 0; ring < grid.Rings; ring++)
        {
            sum += grid.Area[ring] * Surface(piece.Bottom, ring, grid.Heights[0]);
        }

        return sum / (Math.PI * grid.Radius * grid.Radius);
    }

    private double Surface(OvenFace face, int cell, double width) => equations.SurfaceCelsius(face, cell, State.Celsius[cell], width, Seconds);

    private double Sum(double[] field)
    {
        var sum = 0.0;
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            sum += field[cell] * grid.VolumeOf(cell);
        }

        return sum;
    }
}
