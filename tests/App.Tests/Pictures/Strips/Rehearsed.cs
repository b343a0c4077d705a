using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Recipes of the house in kitchens of the house.</summary>
internal static class Rehearsed
{
    public static IEnumerable<string> Recipes =>
    [
        .. Directory.EnumerateFiles(House.PathTo("demo", "recipes"), "*.yaml").Order(StringComparer.Ordinal),
        House.Text("country-loaf.yaml"),
        House.Text("milk-bread.yaml"),
    ];

    /// <summary>Home is the empty name.</summary>
    public static IEnumerable<string> Kitchens => ["", .. Directory.EnumerateFiles(House.PathTo("demo", "kitchens"), "*.yaml").Order(StringComparer.Ordinal)];
}
