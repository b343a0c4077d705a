using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Formulas;

/// <summary>
/// Which lines are added up as one thing: those of one name. Who writes salt and flaky salt, or caster sugar and pearl sugar, means two things to buy, though
/// the larder knows one composition for both. What is counted is counted together: large eggs are eggs.
/// </summary>
internal static class KindNames
{
    /// <summary>The same for what is added up.</summary>
    public static string Of(Ingredient? ingredient, string name) => ingredient switch
    {
        null => Phrase.Normal(name),
        { Piece: not null } => ingredient.Id,
        _ => $"{ingredient.Id} {Phrase.Normal(name)}",
    };
}
