namespace Doughwright.Engine.Quantities;

/// <summary>A temperature, held in degrees Celsius so that a default value is a legal one (0 °C).</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double celsius) => Celsius = Require.Finite(celsius, "Temperature");

    /// <summary>The value in °C.</summary>
    public double Celsius { get; }

    public static Temperature FromCelsius(double celsius) => new(celsius);

    public double Kelvins => Celsius + 273.15;

    public double Fahrenheit => (Celsius * 9 / 5) + 32;

    public static Temperature FromFahrenheit(double fahrenheit) => new((fahrenheit - 32) * 5 / 9);

    public static Temperature FromKelvins(double kelvins) => new(kelvins - 273.15);

    public static TemperatureDelta operator -(Temperature a, Temperature b) => TemperatureDelta.FromKelvins(a.Celsius - b.Celsius);

    public static Temperature operator +(Temperature a, TemperatureDelta difference) => new(a.Celsius + difference.Kelvins);

    public static Temperature operator -(Temperature a, TemperatureDelta difference) => new(a.Celsius - difference.Kelvins);

    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    public static bool operator <(Temperature a, Temperature b) => a.CompareTo(b) < 0;

    public static bool operator >(Temperature a, Temperature b) => a.CompareTo(b) > 0;

    public static bool operator <=(Temperature a, Temperature b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Temperature a, Temperature b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Celsius:R} °C");
}
