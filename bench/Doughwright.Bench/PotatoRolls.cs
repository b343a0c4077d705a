using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Bench;

/// <summary>The potato rolls of the demo, read and balanced, and a colder, higher kitchen in which a dough of 26 °C is asked for.</summary>
internal static class PotatoRolls
{
    public static string Text { get; } = ReadText();

    public static Recipe Recipe { get; } = RecipeText.Read(Text).Recipe!;

    public static Formula Formula { get; } = Formula.Balance(Recipe, Larder.Shipped);

    public static Request Elsewhere { get; } = new()
    {
        Kitchen = Recipe.Home with
        {
            Air = AirProfile.Constant(Temperature.FromCelsius(17)),
            Altitude = Length.FromMetres(1200),
            Oven = OvenMode.Static,
        },
        Dough = Temperature.FromCelsius(26),
        Free = ["potato", "scald"],
    };

    private static string ReadText()
    {
        using var stream = typeof(PotatoRolls).Assembly.GetManifestResourceStream("potato-rolls.yaml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
