using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>A name that a person gives to a kitchen.</summary>
internal static class KitchenNaming
{
    /// <summary>Letters of a name that still fits beside others in a row of choices.</summary>
    public const int Longest = 60;

    /// <summary>What is wrong with a name; nothing when it can be taken.</summary>
    public static void Check(string name, IReadOnlyList<KitchenOnShelf> there, Faults faults)
    {
        if (name.Length == 0)
        {
            faults.Add("kitchen-unnamed");
        }
        else if (name.Length > Longest)
        {
            faults.Add("kitchen-name-long", ("letters", name.Length), ("most", Longest));
        }
        else if (!ComesBack(name))
        {
            faults.Add("kitchen-name-signs", ("name", name));
        }
        else if (there.Any(kitchen => string.Equals(kitchen.Shown, name, StringComparison.OrdinalIgnoreCase)))
        {
            faults.Add("kitchen-name-taken", ("name", name));
        }
    }

    /// <summary>A text says everything it holds: a name that a text cannot say, a hidden mark in it, is none.</summary>
    private static bool ComesBack(string name)
    {
        var kitchen = new Kitchen { Name = name, Air = AirProfile.Constant(Engine.Quantities.Temperature.FromCelsius(20)) };
        return KitchenText.Read(KitchenText.Write(kitchen)) is { Findings.Count: 0, Kitchen: { } read } && read.Name == name;
    }
}
