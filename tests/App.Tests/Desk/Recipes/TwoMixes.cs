namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>A dough that is mixed twice: flour and water, a night in the fridge, then the rest of it.</summary>
internal static class TwoMixes
{
    public static string Text { get; } = File.ReadAllText(House.Text("soaked-loaf.yaml"));
}
