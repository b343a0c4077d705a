using System.Collections.Concurrent;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Recipes of the house in kitchens of the house.</summary>
internal static class Rehearsed
{
    /// <summary>Names of files; those that come with the program, and two that were written as anybody would.</summary>
    public static IEnumerable<string> Recipes =>
    [
        .. Directory.EnumerateFiles(House.PathTo("demo", "recipes"), "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal),
        "country-loaf",
        "milk-bread",
    ];

    /// <summary>"home", and the kitchens that come with the program.</summary>
    public static IEnumerable<string> Kitchens =>
        ["home", .. Directory.EnumerateFiles(House.PathTo("demo", "kitchens"), "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    private static readonly ConcurrentDictionary<(string Recipe, string Kitchen), Rehearsal> Done = new();

    public static Rehearsal Of(string recipe, string kitchen = "home") =>
        Done.GetOrAdd((recipe, kitchen), run => OfText(File.ReadAllText(FileOf(run.Recipe)), run.Kitchen));

    public static Rehearsal OfText(string text, string kitchen = "home") => In(RecipeText.Read(text).Recipe!, kitchen);

    public static Rehearsal In(Recipe recipe, string kitchen = "home") => Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = KitchenOf(kitchen) });

    private static Kitchen? KitchenOf(string kitchen) =>
        kitchen == "home" ? null : KitchenText.Read(File.ReadAllText(House.PathTo("demo", "kitchens", kitchen + ".yaml"))).Kitchen!;

    private static string FileOf(string recipe) =>
        House.PathTo("demo", "recipes", recipe + ".yaml") is var demo && File.Exists(demo) ? demo : House.Text(recipe + ".yaml");
}
