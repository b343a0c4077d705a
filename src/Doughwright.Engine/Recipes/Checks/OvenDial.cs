using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>
/// A bake hotter than almost any home oven goes: most end at 250 to 275 °C, some at 300. From here on a dial in Fahrenheit is likelier.
/// Source: oven-dials.
/// </summary>
internal static class OvenDial
{
    private static readonly Temperature Hottest = Temperature.FromCelsius(290);

    public static IEnumerable<Finding> Check(Recipe recipe) => recipe.Steps
        .Where(step => step.Oven is { } oven && oven.Dial > Hottest && Limits.Oven.Holds(oven.Dial))
        .Select(step => step.About(
            "oven-dial-unusual",
            Grade.Warning,
            ("dial", step.Oven!.Dial),
            ("hottest", Hottest),
            ("offered", Temperature.FromFahrenheit(step.Oven.Dial.Celsius))));
}
