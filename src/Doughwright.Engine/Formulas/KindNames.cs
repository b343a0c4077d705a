using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Formulas;

/// <summary>
/// Which lines are added up as one thing. Two names of one row of the larder are: bread flour and strong white flour. But who writes salt and flaky salt, or
/// olive oil and extra virgin olive oil, means two things to buy, though the larder knows one composition for both.
/// </summary>
internal sealed class KindNames
{
    private readonly ILookup<string, string[]> names;

    private KindNames(ILookup<string, string[]> names) => this.names = names;

    public static KindNames Of(IEnumerable<Part> parts) => new(parts
        .SelectMany(part => part.Lines)
        .Where(line => line.Ingredient is not null)
        .DistinctBy(line => (line.Ingredient!.Id, Phrase.Normal(line.Source.Name)))
        .ToLookup(line => line.Ingredient!.Id, line => Phrase.Words(line.Source.Name)));

    /// <summary>The same for what is added up.</summary>
    public string Of(Ingredient? ingredient, string name)
    {
        if (ingredient is null)
        {
            return Phrase.Normal(name);
        }

        // What is counted is counted together: large eggs are eggs.
        var words = Phrase.Words(name);
        var isSpecial = ingredient.Piece is null && names[ingredient.Id].Any(plain => plain.Length < words.Length && plain.All(words.Contains));
        return isSpecial ? $"{ingredient.Id} {Phrase.Normal(name)}" : ingredient.Id;
    }
}
