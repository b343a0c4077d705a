using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Bake;

/// <summary>Where a minute and a temperature lie in the picture of a bake.</summary>
internal sealed class BakeFrame(double minutes, double lowest, double highest)
{
    public const double Width = 520;
    public const double Left = 44;

    /// <summary>Right of it stand the names of the lines.</summary>
    public const double Right = 382;

    public const double Foot = 214;
    public const double Head = 16;

    private static readonly double[] MinuteSteps = [1, 2, 5, 10, 15, 30, 60, 120];

    public double Minutes { get; } = minutes;

    public double StepMinutes { get; } = MinuteSteps.FirstOrDefault(step => minutes / step <= 6, MinuteSteps[^1]);

    public Temperature Lowest { get; } = Temperature.FromCelsius(lowest);

    public Temperature Highest { get; } = Temperature.FromCelsius(highest);

    public double X(Duration after) => Left + (after.Minutes / Minutes * (Right - Left));

    public double Y(Temperature temperature) => Foot - ((temperature - Lowest).Kelvins / (Highest - Lowest).Kelvins * (Foot - Head));
}
