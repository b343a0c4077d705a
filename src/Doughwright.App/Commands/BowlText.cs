using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>A vessel as typed: "none", "steel:150g", "glass:350g,warmed".</summary>
internal static class BowlText
{
    private const string Warmed = "warmed";

    private static readonly Dictionary<string, VesselMaterial> Materials =
        Enum.GetValues<VesselMaterial>().ToDictionary(material => material.ToString().ToLowerInvariant());

    /// <param name="shape">What the step uses as written: a tray stays a tray.</param>
    public static Vessel? Read(Given given, string option, string text, VesselShape shape)
    {
        if (text == "none")
        {
            return Vessel.None;
        }

        var pieces = text.Split(',', 2);
        var halves = pieces[0].Split(':', 2);
        var warmed = pieces.Length == 2 && pieces[1].Trim() == Warmed;
        if (halves.Length < 2 || (pieces.Length == 2 && !warmed))
        {
            given.Faults.Add("bowl-wanted", ("option", option), ("given", text));
            return null;
        }

        var material = given.Word(option, halves[0].Trim(), Materials);
        var mass = given.Mass(option, halves[1].Trim(), Limits.Vessel);
        return material is { } known && mass is { } weight ? new(shape, known, weight, warmed) : null;
    }
}
