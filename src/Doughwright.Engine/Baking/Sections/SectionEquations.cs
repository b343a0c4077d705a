using Doughwright.Engine.Heat;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Sections;

/// <summary>
/// The balances of heat and water of every cell, made straight about a guess. Of a cell with the number c, row 2c is its heat and row 2c + 1
/// its water; the unknowns are the corrections to temperature and water.
/// </summary>
/// <remarks>
/// Heat: ρ_s d/dt(h_s + c_w W T) = ∇·(k ∇T) + ∇·((h_v - (1 - ψ) c_w T) β ∇p) - s h_v.
/// Water: ρ_s dW/dt = ∇·(ψ β ∇p) + ∇·(ρ_s D ∇W) - s, with s = G max(p - P, 0).
/// Vapour goes from the warm side of a gas cell to the cold one and gives up its heat there; the share 1 - ψ of its water goes back as
/// liquid, unless either side is dry. What boils off leaves the piece at once, so a front, a crust and a plateau at boiling come by
/// themselves. Source: house-bake-section.
/// </remarks>
internal sealed class SectionEquations
{
    /// <summary>Crumb comes to count as boiling over so many kelvins below where water boils.</summary>
    private const double BoilingWithin = 9;

    /// <summary>Two places are never nearer than this share of their cells' distance, nor one to its surface than this share of its cell.</summary>
    private const double LeastApart = 0.05;

    private const double Middle = 0.5;

    /// <summary>Each round brings the surface that walls shine on ten times as near or more: what they give changes by a hundredth in 4 K.</summary>
    private const int ShineRounds = 3;

    private readonly BakingPiece piece;
    private readonly CylinderGrid grid;
    private readonly CrumbLaws laws;
    private readonly VapourState[] vapour;
    private readonly double[] permeance;

    /// <summary>Share of a cell's width between its outer face and the place of its temperature.</summary>
    private readonly double[] places;

    private readonly double[] heldBefore;
    private readonly double[] water;
    private readonly double boils;
    private readonly double solids;
    private readonly double gas;
    private readonly double conductivity;
    private readonly double pressure;

    public SectionEquations(BakingPiece piece, CylinderGrid grid)
    {
        (this.piece, this.grid, laws) = (piece, grid, piece.Laws);
        (solids, gas, conductivity, pressure) = (piece.SolidsPerCubicMetre, piece.GasShare, piece.CrumbConductivity, piece.Pressure.Pascals);
        vapour = new VapourState[grid.Cells];
        permeance = new double[grid.Cells];
        water = new double[grid.Cells];
        boils = laws.BoilRate > 0 ? SaturatedWater.BoilingPoint(piece.Pressure).Celsius : double.PositiveInfinity;
        (places, heldBefore) = (new double[grid.Cells], new double[grid.Cells]);
        Array.Fill(places, Middle);
        Flows = new SectionFlows(grid.Cells);
        Matrix = new(2 * grid.Cells, (2 * grid.Rings) + 1);
    }

    public BandedMatrix Matrix { get; }

    /// <summary>What the last guess exchanges with the oven.</summary>
    public SectionFlows Flows { get; }

    /// <summary>J/m³ against 0 °C.</summary>
    public double HeatOf(double celsius, double held) => solids * (piece.Solids.ContentAt(celsius) + (CrumbLaws.WaterHeat * held * celsius));

    /// <summary>How that grows with temperature, J/(m³ K), and with water, J/m³.</summary>
    public (double PerKelvin, double PerWater) HeatSlopes(double celsius, double held) =>
        (solids * (piece.Solids.SpecificHeatAt(celsius) + (CrumbLaws.WaterHeat * held)), solids * CrumbLaws.WaterHeat * celsius);

    /// <summary>
    /// Puts the temperature of every cell where it belongs in it: in the middle, but where crumb boils at the front between dry and wet, which goes
    /// through the cell as it dries. So the way for heat from the surface to the front grows evenly, and not by a cell at a time.
    /// </summary>
    /// <param name="state">Before a step, whose flows then go by it.</param>
    public void Place(SectionState state)
    {
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            var near = Math.Clamp((state.Celsius[cell] - boils + BoilingWithin) / BoilingWithin, 0, 1);
            var boiling = near * near * (3 - (2 * near));
            var dried = 1 - Math.Clamp(state.Water[cell] / piece.Water, 0, 1);
            heldBefore[cell] = state.Water[cell];
            places[cell] = Middle + (boiling * (dried - Middle));
        }
    }

    /// <param name="rate">Weight of the new content in its rate of change, 1/s.</param>
    /// <param name="known">What of that rate is known from before: J/(m³ s) and kg/(kg s).</param>
    /// <param name="seconds">Since the piece went in.</param>
    public void Straighten(SectionState guess, double rate, SectionState known, double seconds)
    {
        Matrix.Clear();
        Flows.Clear();
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            water[cell] = guess.Water[cell];
            vapour[cell] = CrumbLaws.Vapour(guess.Celsius[cell], guess.Water[cell]);
            permeance[cell] = laws.Permeance(guess.Celsius[cell], gas);
        }

        for (var layer = 0; layer < grid.Layers; layer++)
        {
            for (var ring = 0; ring < grid.Rings; ring++)
            {
                var cell = grid.At(ring, layer);
                Hold(guess, cell, rate, known);
                Boil(guess, cell);
                var (width, height, area) = (grid.Widths[ring], grid.Heights[layer], grid.Area[ring]);
                if (ring > 0)
                {
                    Exchange(guess, cell, cell - 1, 2 * Math.PI * grid.Edges[ring] * height, width, grid.Widths[ring - 1]);
                }

                if (layer > 0)
                {
                    Exchange(guess, cell, cell - grid.Rings, area, height, grid.Heights[layer - 1]);
                }

                if (ring == grid.Rings - 1)
                {
                    Meet(piece.Side, guess, cell, 2 * Math.PI * grid.Radius * height, width, seconds);
                }

                if (layer == 0)
                {
                    Meet(piece.Bottom, guess, cell, area, height, seconds);
                }

                if (layer == grid.Layers - 1)
                {
                    Meet(piece.Top, guess, cell, area, height, seconds);
                }
            }
        }
    }

    /// <summary>Temperature of the surface outside a cell.</summary>
    /// <param name="width">Of the cell across the face, m.</param>
    public double SurfaceCelsius(OvenFace face, int cell, double celsius, double width, double seconds)
    {
        var (within, surface) = (ToSurface(cell, width), celsius);
        for (var round = 0; round < (face.Shine > 0 ? ShineRounds : 1); round++)
        {
            var (coefficient, meets) = face.HeatAt(seconds, surface);
            surface = ((within * celsius) + (coefficient * meets)) / (within + coefficient);
        }

        return surface;
    }

    private void Hold(SectionState guess, int cell, double rate, SectionState known)
    {
        var volume = grid.VolumeOf(cell);
        var (celsius, held) = (guess.Celsius[cell], guess.Water[cell]);
        var (perKelvin, perWater) = HeatSlopes(celsius, held);
        Put(cell, cell, volume * rate * perKelvin, volume * rate * perWater, 0, volume * rate * solids);
        Matrix.Right[2 * cell] -= volume * ((rate * HeatOf(celsius, held)) - known.Heat[cell]);
        Matrix.Right[(2 * cell) + 1] -= volume * solids * ((rate * held) - known.Held[cell]);
    }

    private void Boil(SectionState guess, int cell)
    {
        var excess = vapour[cell].Pascals - pressure;
        if (excess > 0)
        {
            Leave(cell, guess.Celsius[cell], grid.VolumeOf(cell) * laws.BoilRate, excess);
        }
    }

    private void Meet(OvenFace face, SectionState guess, int cell, double area, double width, double seconds)
    {
        var celsius = guess.Celsius[cell];
        if (face.IsHeated)
        {
            var within = ToSurface(cell, width);
            var (takes, meets) = face.HeatAt(seconds, face.Shine > 0 ? SurfaceCelsius(face, cell, celsius, width, seconds) : celsius);
            var coefficient = area * takes * within / (takes + within);
            var heat = coefficient * (meets - celsius);
            Matrix.Right[2 * cell] += heat;
            Matrix.Add(2 * cell, 2 * cell, coefficient);
            Flows.TakeIn(cell, heat, -coefficient);
        }

        if (face.Open > 0 && laws.Effectiveness > 0)
        {
            var hindrance = (width / (2 * permeance[cell])) + face.Hindrance(celsius, laws.SkinResistance);
            Leave(cell, celsius, face.Open * area / hindrance, vapour[cell].Pascals - face.Vapour);
        }
    }

    /// <summary>Vapour that leaves a cell for good under a difference of pressure, and takes its heat along.</summary>
    private void Leave(int cell, double celsius, double conductance, double difference)
    {
        var content = CrumbLaws.VapourContent(celsius);
        var (flow, perKelvin, perWater) = (conductance * difference, conductance * vapour[cell].PerKelvin, conductance * vapour[cell].PerWater);
        var heatPerKelvin = (perKelvin * content) + (flow * CrumbLaws.VapourHeat);
        Put(cell, cell, heatPerKelvin, perWater * content, perKelvin, perWater);
        Matrix.Right[2 * cell] -= flow * content;
        Matrix.Right[(2 * cell) + 1] -= flow;
        Flows.LetOut(cell, flow * content, heatPerKelvin, perWater * content);
    }

    private void Exchange(SectionState guess, int cell, int other, double area, double width, double otherWidth)
    {
        var distance = (width + otherWidth) / 2;
        var conductance = area * conductivity / Math.Max(Apart(cell, other, width, otherWidth), LeastApart * distance);
        var heat = conductance * (guess.Celsius[other] - guess.Celsius[cell]);
        var permeability = (width + otherWidth) / ((width / permeance[cell]) + (otherWidth / permeance[other]));
        var passage = laws.Effectiveness > 0 ? area * permeability / distance : 0;
        var flow = passage * (vapour[other].Pascals - vapour[cell].Pascals);
        var staying = 1 - ((1 - laws.StayingShare) * CrumbLaws.Wetness(water[cell]) * CrumbLaws.Wetness(water[other]));
        var from = guess.Celsius[flow > 0 ? other : cell];
        var content = CrumbLaws.VapourContent(from) - ((1 - staying) * CrumbLaws.WaterHeat * from);
        var seep = area * solids * laws.LiquidDiffusivity / distance;
        heat += flow * content;
        var moved = (staying * flow) + (seep * (water[other] - water[cell]));
        Matrix.Right[2 * cell] += heat;
        Matrix.Right[2 * other] -= heat;
        Matrix.Right[(2 * cell) + 1] += moved;
        Matrix.Right[(2 * other) + 1] -= moved;
        Tie(cell, other, conductance, passage * content, passage * staying, seep);
        Tie(other, cell, conductance, passage * content, passage * staying, seep);
    }

    /// <summary>From the place of one cell's temperature to that of a neighbour: the drier of the two lies farther out.</summary>
    private double Apart(int cell, int other, double width, double otherWidth) => heldBefore[cell] < heldBefore[other]
        ? ((1 - places[cell]) * width) + (places[other] * otherWidth)
        : ((1 - places[other]) * otherWidth) + (places[cell] * width);

    /// <summary>What conducts between the place of a cell's temperature and the surface outside it, W/(m² K).</summary>
    private double ToSurface(int cell, double width) => conductivity / (width * Math.Max(LeastApart, places[cell]));

    /// <summary>How the balances of a cell feel its own state and that of a neighbour.</summary>
    private void Tie(int cell, int other, double conductance, double heat, double moved, double seep)
    {
        var (own, their) = (vapour[cell], vapour[other]);
        Put(cell, cell, conductance + (heat * own.PerKelvin), heat * own.PerWater, moved * own.PerKelvin, (moved * own.PerWater) + seep);
        Put(cell, other, -conductance - (heat * their.PerKelvin), -heat * their.PerWater, -moved * their.PerKelvin, -(moved * their.PerWater) - seep);
    }

    private void Put(int cell, int other, double heatByKelvin, double heatByWater, double waterByKelvin, double waterByWater)
    {
        Matrix.Add(2 * cell, 2 * other, heatByKelvin);
        Matrix.Add(2 * cell, (2 * other) + 1, heatByWater);
        Matrix.Add((2 * cell) + 1, 2 * other, waterByKelvin);
        Matrix.Add((2 * cell) + 1, (2 * other) + 1, waterByWater);
    }
}
