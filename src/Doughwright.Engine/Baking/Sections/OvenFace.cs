namespace Doughwright.Engine.Baking.Sections;

/// <summary>What one face of a piece meets in the oven.</summary>
/// <param name="Convective">W/(m² K), to the air.</param>
/// <param name="Radiative">W/(m² K), to the walls, or by contact to what it stands on.</param>
/// <param name="Air">°C after so many seconds.</param>
/// <param name="Wall">°C after so many seconds, of walls, tray or stone.</param>
/// <param name="Open">Share of it through which vapour gets away, 0 to 1: none where a tin, a tray or a stone lies against it.</param>
/// <param name="Vapour">Pressure of vapour in the oven's air, Pa.</param>
internal sealed record OvenFace(double Convective, double Radiative, Func<double, double> Air, Func<double, double> Wall, double Open, double Vapour)
{
    /// <summary>Vapour in an oven without steam, in Pa: that of a kitchen. Below 2 kPa it hardly matters beside the 80 kPa of hot crumb.</summary>
    public const double KitchenVapour = 1000;

    /// <summary>ρ c_p Le^(2/3) of air, which turns a heat transfer coefficient into one of vapour, in J/(m³ K). Source: lewis-evaporation.</summary>
    private const double Lewis = 1070;

    /// <summary>An oven as hot all the time, walls and air alike.</summary>
    public static OvenFace Steady(double coefficient, double celsius, double open = 1) =>
        new(coefficient, 0, _ => celsius, _ => celsius, open, KitchenVapour);

    private const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>What the walls shine on it beside that, as a share of what black walls all round would.</summary>
    public double Shine { get; init; }

    /// <summary>Whether any heat comes in through it.</summary>
    public bool IsHeated => Convective + Radiative + Shine > 0;

    /// <summary>Heat that the face takes per kelvin, and the one temperature that it seems to meet.</summary>
    /// <param name="surface">°C, about: σ (T_w² + T_s²)(T_w + T_s) changes little with it.</param>
    public (double Coefficient, double Meets) HeatAt(double seconds, double surface)
    {
        var (air, wall) = (Air(seconds), Wall(seconds));
        var (hot, cold) = (wall + 273.15, surface + 273.15);
        var shines = Radiative + (Shine * StefanBoltzmann * ((hot * hot) + (cold * cold)) * (hot + cold));
        var coefficient = Convective + shines;
        return (coefficient, coefficient > 0 ? ((Convective * air) + (shines * wall)) / coefficient : 0);
    }

    /// <summary>The same face in an oven that gives so many times the heat.</summary>
    public OvenFace Scaled(double factor) => this with { Convective = factor * Convective, Radiative = factor * Radiative, Shine = factor * Shine };

    /// <summary>What keeps vapour from leaving the surface, in m² s Pa/kg.</summary>
    /// <param name="skin">s/m.</param>
    public double Hindrance(double celsius, double skin) =>
        ((Lewis / Convective) + skin) * CrumbLaws.GasConstant * (celsius + 273.15) / CrumbLaws.VapourKilogramsPerMole;
}
