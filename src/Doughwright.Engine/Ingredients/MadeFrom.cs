namespace Doughwright.Engine.Ingredients;

/// <summary>
/// What the author makes of something in the larder while only water comes or goes: roasted, reduced, browned, or soaked with all the water taken up.
/// Solids stay, so two weighings tell what it consists of. Where something is poured off they do not. Source: mass-balance.
/// </summary>
/// <param name="What">Name and conditions as written: "pumpkin, raw".</param>
public sealed record MadeFrom(string What, Weighings Weighed)
{
    /// <summary>The row it is made from; null when the larder has no single one.</summary>
    /// <param name="region">Where the words were written.</param>
    public Ingredient? RowIn(Larder larder, Region? region)
    {
        string[] words = [.. What.Split(',').Select(word => word.Trim())];
        return larder.Find(words[0], words[1..], region).Ingredient;
    }

    /// <summary>What 100 g of it consist of; null when that cannot be told from the row and the weighings.</summary>
    public Composition? Of(Ingredient row) => SolidsBalance.Cooked(row.Composition, Weighed.Before, Weighed.After);

    /// <summary>The ingredient under the name and the role of a label that has no figures; null when it cannot be told.</summary>
    internal Ingredient? Read(Label label, Region? region)
    {
        if (RowIn(Larder.Shipped, region) is not { } row || Of(row) is not { } composition)
        {
            return null;
        }

        var made = label.Holding(composition, new("mass-balance", null, "weighed", null, $"made from {row.Name}"));
        return made with
        {
            MeltsAsButter = row.MeltsAsButter,
            Allergens = label.Allergens ?? row.Allergens,
            AllergensUnitedStates = label.Allergens is null ? row.AllergensUnitedStates : [],
            AllergensKnown = label.Allergens is not null || row.AllergensKnown,
        };
    }
}
