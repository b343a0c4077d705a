using System.Globalization;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A tool as written: "two baking trays", "steel bowl of 500 g".</summary>
/// <param name="Words">Its words in the singular, without counts: "baking", "tray".</param>
/// <param name="Mass">The mass named with it, which tells one bowl from another.</param>
internal sealed record ToolName(string Written, string[] Words, Mass? Mass)
{
    private static readonly string[] Counts = ["a", "an", "the", "one", "two", "three", "four", "five", "six", "large", "small", "big"];

    /// <summary>The word that says what it is: "tray".</summary>
    public string Head => Words is [.., var last] ? last : "";

    public static ToolName Read(string written)
    {
        var end = written.IndexOf(" of ", StringComparison.Ordinal);
        end = end < 0 ? written.IndexOf(',', StringComparison.Ordinal) : end;
        var name = end < 0 ? written : written[..end];
        return new(
            written,
            [.. Phrase.Words(name).Where(word => !Counts.Contains(word) && !char.IsAsciiDigit(word[0]))],
            end < 0 ? null : MassIn(written[end..]));
    }

    /// <summary>Whether this tool will do where the other is asked for: one of the two names says no more than the other.</summary>
    public bool WillDoFor(ToolName asked) =>
        Words.Length > 0
        && asked.Words.Length > 0
        && (asked.Words.All(Words.Contains) || (Words.All(asked.Words.Contains) && Head == asked.Head));

    /// <summary>Whether this is the vessel of a step. Material and mass are compared where both say them.</summary>
    public bool Is(Vessel vessel)
    {
        var material = Enum.GetNames<VesselMaterial>().FirstOrDefault(name => Words.Contains(name, StringComparer.OrdinalIgnoreCase));
        return Words.Contains(vessel.Shape.ToString(), StringComparer.OrdinalIgnoreCase)
            && (material is null || vessel.Material is null || vessel.Material.ToString() == material)
            && (Mass is null || vessel.Mass is null || Mass == vessel.Mass);
    }

    private static Mass? MassIn(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var index = 0; index + 1 < words.Length; index++)
        {
            // "NaN" and "Infinity" parse too.
            if (double.TryParse(words[index], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
                && double.IsFinite(number))
            {
                return words[index + 1] switch
                {
                    "g" => Quantities.Mass.FromGrams(number),
                    "kg" => Quantities.Mass.FromKilograms(number),
                    _ => null,
                };
            }
        }

        return null;
    }
}
