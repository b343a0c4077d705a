using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// A dough on its way, lane by lane. It can be advanced piece by piece beside a conduction run, and carried from the bulk through shaping
/// into the proof: gas, sugar and yeast go along.
/// </summary>
internal sealed class RiseState
{
    /// <summary>Eight lanes at once were measured slower than four: the step's values do not fit the registers.</summary>
    private const int QuickestWidth = 4;

    private readonly double[] substrateAtFirst;

    private RiseStage stage;
    private double clock;

    /// <summary>The dough after mixing: nothing but air in it.</summary>
    /// <param name="scale">Rate against the book, per lane.</param>
    /// <param name="pascals">Pressure of the air, per lane.</param>
    /// <param name="celsius">Mean temperature of the dough, per lane.</param>
    public RiseState(
        RiseDough dough,
        RiseParameters parameters,
        ReadOnlySpan<double> scale,
        ReadOnlySpan<double> pascals,
        ReadOnlySpan<double> celsius)
    {
        Lanes = dough.Lanes;
        Coefficients = new(dough, parameters, scale, pascals);
        Celsius = celsius[..Lanes].ToArray();
        Moles = new double[Lanes];
        Escaped = new double[Lanes];
        Rate = new double[Lanes];
        Substrate = new double[Lanes];
        Yeast = [.. dough.FreshYeastGrams];
        Dose = new double[Lanes];
        Aged = new double[Lanes];
        Growth = new double[Lanes];
        AirMoles = new double[Lanes];
        StoppedMinutes = new double[Lanes];
        for (var lane = 0; lane < Lanes; lane++)
        {
            var kelvins = Temperature.FromCelsius(Celsius[lane]).Kelvins;
            AirMoles[lane] = Coefficients.AirAtFirst[lane] / (Coefficients.GasPerKelvin[lane] * kelvins);
            Substrate[lane] = parameters.Substrate[lane] + WaterActivity.HexosePerSucrose * dough.SugarGrams[lane];
            Dose[lane] = Fermentation.Dose.Effective(Percent.FromValue(Yeast[lane]), parameters.CrowdedExponent[lane]);
            Growth[lane] = 1;
        }

        substrateAtFirst = [.. Substrate];
        stage = RiseStage.ForMinutes(new double[Lanes]);
        Begin(stage);
    }

    private RiseState(RiseState other, int lanes)
    {
        substrateAtFirst = other.substrateAtFirst;
        stage = other.stage;
        clock = other.clock;
        Lanes = lanes;
        Coefficients = other.Coefficients;
        AirMoles = other.AirMoles;
        Celsius = other.Celsius[..lanes];
        Moles = other.Moles[..lanes];
        Escaped = other.Escaped[..lanes];
        Rate = other.Rate[..lanes];
        IsUnderWay = other.IsUnderWay;
        Substrate = other.Substrate[..lanes];
        Yeast = other.Yeast[..lanes];
        Dose = other.Dose[..lanes];
        Aged = other.Aged[..lanes];
        Growth = other.Growth[..lanes];
        StoppedMinutes = other.StoppedMinutes[..lanes];
    }

    public int Lanes { get; }

    /// <summary>Volume now, against the volume after mixing.</summary>
    public double[] Growth { get; }

    /// <summary>Minutes after which each lane met the end of the stage; +infinity while it has not.</summary>
    public double[] StoppedMinutes { get; }

    /// <summary>Carbon dioxide in the dough, mol per 100 g of flour.</summary>
    public double[] Moles { get; }

    /// <summary>Carbon dioxide made since the dough was last pressed that it did not hold, mol per 100 g of flour.</summary>
    public double[] Escaped { get; }

    /// <summary>Sugar left, g of hexose per 100 g of flour.</summary>
    public double[] Substrate { get; }

    /// <summary>Fresh-equivalent yeast, g per 100 g of flour.</summary>
    public double[] Yeast { get; }

    public double[] Celsius { get; }

    /// <summary>
    /// The time the yeast has lived, counted by its rate: hours at 27 °C for bread yeast; for a sourdough how often it has grown by a factor of e.
    /// </summary>
    public double[] Aged { get; }

    /// <summary>Carbon dioxide made so far, mol per 100 g of flour, whether it is still there or not: what the sugar that is gone came to.</summary>
    public double Made(int lane)
    {
        var supplied = Coefficients.Maltose[lane] * Aged[lane] / Coefficients.GrowthPerRate[lane];
        return (substrateAtFirst[lane] + supplied - Substrate[lane]) / RiseCoefficients.HexoseGramsPerMole;
    }

    public bool AllStopped => StoppedMinutes.All(double.IsFinite);

    internal RiseCoefficients Coefficients { get; }

    internal double[] AirMoles { get; }

    internal double[] Dose { get; }

    /// <summary>Relative rate where the last step ended; of use only while <see cref="IsUnderWay"/>.</summary>
    internal double[] Rate { get; }

    /// <summary>Whether a stage has begun that is not at its first step.</summary>
    internal bool IsUnderWay { get; private set; }

    /// <summary>
    /// An independent copy: what happens to one does not happen to the other. A stage that has begun, and its folds, are shared.
    /// </summary>
    public RiseState Copy() => new(this, Lanes);

    /// <summary>A copy of the central lane alone.</summary>
    public RiseState Likely() => new(this, 1);

    /// <summary>Sets every lane going again, toward the end of another stage; minutes count from here.</summary>
    public void Begin(RiseStage next)
    {
        stage = next;
        stage.Folds.Clear();
        clock = 0;
        IsUnderWay = false;
        StoppedMinutes.AsSpan().Fill(double.PositiveInfinity);
    }

    /// <summary>Goes on by as many steps as there are rows of temperatures. Lanes that have met the end of the stage wait.</summary>
    /// <param name="celsius">Mean temperature of the dough at the end of each step, [step * lanes + lane].</param>
    /// <param name="growth">Gets the growth at the end of each step, laid out likewise; may be empty.</param>
    public void Advance(ReadOnlySpan<double> celsius, Duration step, Span<double> growth = default) =>
        Advance(new(celsius, default, default, Lanes), step, growth, Math.Min(Numerics.Lanes.Widest, QuickestWidth));

    /// <summary>The same in a dough that is not one temperature.</summary>
    public void Advance(in RiseWarmth warmth, Duration step, Span<double> growth = default) =>
        Advance(warmth, step, growth, Math.Min(Numerics.Lanes.Widest, QuickestWidth));

    /// <summary>The same along a whole history.</summary>
    public void Advance(RiseHistory history) => Advance(history.Warmth, history.Step);

    /// <summary>A history with the rates of this dough along it: they hang on its temperatures, and on nothing that a run changes.</summary>
    public RiseHistory WithRates(RiseHistory history)
    {
        var rates = new double[history.Celsius.Length];
        var warmth = history.Warmth;
        switch (Math.Min(Numerics.Lanes.Widest, QuickestWidth))
        {
            case 1:
                RiseKernel.Rates<Lane1>(this, warmth, rates);
                break;
            case 2:
                RiseKernel.Rates<Lane2>(this, warmth, rates);
                break;
            default:
                RiseKernel.Rates<Lane4>(this, warmth, rates);
                break;
        }

        return history with { Rates = rates };
    }

    internal void Advance(in RiseWarmth warmth, Duration step, Span<double> growth, int width)
    {
        var minutes = Require.Within(step.Minutes, 1e-6, 60, "Step of the rise");
        if (warmth.Lanes != Lanes || warmth.Fault() is not null || (!growth.IsEmpty && growth.Length != warmth.Celsius.Length))
            throw new ArgumentOutOfRangeException(nameof(warmth), warmth.Celsius.Length, warmth.Fault() ?? "Rows of one value per lane are needed.");
        switch (width)
        {
            case 1:
                RiseKernel.Advance<Lane1>(this, stage, clock, minutes, warmth, growth);
                break;
            case 2:
                RiseKernel.Advance<Lane2>(this, stage, clock, minutes, warmth, growth);
                break;
            case 4:
                RiseKernel.Advance<Lane4>(this, stage, clock, minutes, warmth, growth);
                break;
            case 8:
                RiseKernel.Advance<Lane8>(this, stage, clock, minutes, warmth, growth);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(width), width, "Must be 1, 2, 4 or 8.");
        }

        IsUnderWay = true;
        clock += minutes * (warmth.Celsius.Length / Lanes);
    }

    /// <summary>
    /// The volume against that after mixing if the dough had held all the gas it has made since it was last pressed. A dough that holds all of it
    /// measures just that; where this is beyond what its flour holds, it has sunk.
    /// </summary>
    public double GrowthWithEscaped(int lane)
    {
        var pack = new RisePack<Lane1>(Coefficients, AirMoles, lane);
        var celsius = new Lane1(Celsius[lane]);
        return pack.Growth(new(Moles[lane] + Escaped[lane]), pack.PerMole(celsius), pack.Held(celsius)).Value;
    }

    /// <summary>Presses gas out of the bubbles, as shaping does. What is dissolved stays, and the dough begins anew. Source: gas-kept.</summary>
    /// <param name="keeps">Share of the carbon dioxide in the bubbles that stays, per lane.</param>
    public void PressOut(ReadOnlySpan<double> keeps)
    {
        for (var lane = 0; lane < Lanes; lane++)
        {
            var pack = new RisePack<Lane1>(Coefficients, AirMoles, lane);
            var celsius = new Lane1(Celsius[lane]);
            Escaped[lane] = 0;
            var lost = 1 - Require.Within(keeps[lane], 0, 1, "Share of gas kept");
            Moles[lane] -= lost * pack.InBubbles(new(Growth[lane]), celsius, new(Moles[lane])).Value;
            Growth[lane] = pack.Growth(new(Moles[lane]), pack.PerMole(celsius), pack.Held(celsius)).Value;
        }
    }
}
