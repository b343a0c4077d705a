using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What stands in for a line.</summary>
/// <param name="Name">As the reader wrote it.</param>
/// <param name="Conditions">The reader's, or else those of the line that still hold.</param>
internal sealed record StandIn(string Name, IReadOnlyList<string> Conditions, LarderMatch Match)
{
    // What is said of butter and makes no sense of oil.
    private static readonly string[] OfFirmFat = ["soft", "softened", "melted", "cold", "cubed", "diced"];

    public Ingredient? Ingredient => Match.Ingredient;

    public Composition Composition => Ingredient?.Composition ?? Composition.Unknown;

    /// <summary>"squash, baked, mashed": the name, and the conditions behind it.</summary>
    public static (string Name, string[] Conditions) Halves(string written)
    {
        var pieces = written.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return pieces.Length == 0 ? ("", []) : (pieces[0], [.. pieces[1..].Select(piece => piece.ToLowerInvariant())]);
    }

    public static StandIn Of(Larder larder, string by, LineFormula line)
    {
        var (name, said) = Halves(by);
        if (said.Length > 0)
        {
            return new(name, said, larder.Find(name, said));
        }

        var match = larder.Find(name, line.Source.Conditions);
        if (Phrase.Normal(name) == Phrase.Normal(line.Name))
        {
            return new(name, line.Source.Conditions, match);
        }

        var melts = match.Ingredient?.MeltsAsButter == line.Ingredient?.MeltsAsButter;
        var sameRole = match.Ingredient?.Role == line.Role;
        return new(name, [.. line.Source.Conditions.Where(condition => sameRole && (melts || !OfFirmFat.Contains(condition)))], match);
    }
}
