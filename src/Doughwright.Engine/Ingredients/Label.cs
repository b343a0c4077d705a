namespace Doughwright.Engine.Ingredients;

/// <summary>
/// What the label of a product says, in grams per 100 g, or per 100 ml of which the weight is known. What it does not say is null and stays unknown: a blank is never taken as zero.
/// </summary>
/// <remarks>
/// European labels give carbohydrate without fibre (Regulation 1169/2011, annex I), labels of the United States with it. Source: label.
/// </remarks>
public sealed record Label
{
    // Labels round to whole grams above ten, so parts that are right can add up to a little more than 100.
    internal const double MostSum = 102;
    internal const double Rounding = 0.5;

    /// <summary>As the author calls it.</summary>
    public required string Name { get; init; }

    /// <summary>What it counts as. A label does not say it, and it is not guessed from the figures.</summary>
    public required Role Role { get; init; }

    /// <summary>Whether fibre stands apart from the carbohydrate.</summary>
    public LabelForm Form { get; init; }

    /// <summary>What 100 ml of it weigh, in grams, where the figures are those of 100 ml; null where they are those of 100 g.</summary>
    public double? HundredMillilitres { get; init; }

    public double? Fat { get; init; }

    /// <summary>Without fibre on a European label, with it on one of the United States.</summary>
    public double? Carbohydrate { get; init; }

    /// <summary>A part of the carbohydrate.</summary>
    public double? Sugars { get; init; }

    public double? Fibre { get; init; }

    public double? Protein { get; init; }

    public double? Salt { get; init; }

    /// <summary>In milligrams, for labels that give it in place of salt.</summary>
    public double? SodiumMilligrams { get; init; }

    /// <summary>Ash, in which the salt is.</summary>
    public double? Ash { get; init; }

    /// <summary>A sample before and after it was dried until it lost no more: what it lost is its water, and whatever else leaves at that heat.</summary>
    public Weighings? Dried { get; init; }

    /// <summary>When it is known; else it is worked out where everything else is known.</summary>
    public double? Water { get; init; }

    /// <summary>A part of the sugars. Zero for what holds no milk.</summary>
    public double? Lactose { get; init; }

    /// <summary>In grams. What a label does not mention is left out of the water that is worked out.</summary>
    public double? Alcohol { get; init; }

    /// <summary>Codes of its allergens; null when the author does not say.</summary>
    public IReadOnlyList<string>? Allergens { get; init; }

    /// <summary>
    /// The ingredient, or everything that cannot be true on one label.
    /// Water is what is left of 100 g: w = 100 - fat - protein - carbohydrate with fibre - salt - alcohol. Ash other than salt is not on a label, so
    /// it is counted as water unless it is known; that is 0 to 2 g in most foods. Null where a part of the sum is unknown.
    /// </summary>
    public LabelReading Read()
    {
        var label = InHundredGrams();
        var faults = new LabelCheck(label).Faults();
        return faults.Count > 0 ? new(null, faults) : new(label.OfHundredGrams(), []);
    }

    private Ingredient OfHundredGrams()
    {
        var carbohydrate = Form == LabelForm.European ? Carbohydrate + Fibre : Carbohydrate;
        var salt = AllSalt;
        var left = 100 - (Fat + Protein + carbohydrate + (Ash ?? salt) + (Alcohol ?? 0));
        // Rounded parts may come to a little more than 100 (which is checked); then the label leaves no room for water.
        var water = AllWater ?? (left is < 0 ? 0 : left);
        var note = Dried is not null && Water is null ? "water by drying"
            : Water is not null || water is null ? ""
            : Ash is not null ? "water worked out: what is left of 100 g"
            : "water worked out: what is left of 100 g, ash other than salt counted in";
        return Holding(new(water, Protein, Fat, carbohydrate, Sugars, Fibre, Ash, salt, Sugars == 0 ? 0 : Lactose, Alcohol), new("label", null, "label", null, note));
    }

    /// <summary>Of 100 g, as the label says it; null where it says none, or all of it with the fibre.</summary>
    public double? CarbohydrateWithoutFibre => Form == LabelForm.European ? InHundredGrams().Carbohydrate : null;

    /// <summary>The ingredient of this name and role with another composition.</summary>
    internal Ingredient Holding(Composition composition, Evidence evidence) => new()
    {
        Id = $"own-{string.Join('-', Phrase.Words(Name))}",
        Name = Name,
        Role = Role,
        Composition = composition,
        Allergens = Allergens ?? [],
        AllergensKnown = Allergens is not null,
        Evidence = evidence,
    };

    /// <summary>The label as it would be of 100 g: every figure on what 100 ml weigh.</summary>
    private Label InHundredGrams()
    {
        if (HundredMillilitres is not { } weigh)
        {
            return this;
        }

        var per = 100 / weigh;
        return this with
        {
            HundredMillilitres = null,
            Fat = Fat * per,
            Carbohydrate = Carbohydrate * per,
            Sugars = Sugars * per,
            Fibre = Fibre * per,
            Protein = Protein * per,
            Salt = Salt * per,
            SodiumMilligrams = SodiumMilligrams * per,
            Ash = Ash * per,
            Water = Water * per,
            Lactose = Lactose * per,
            Alcohol = Alcohol * per,
        };
    }

    /// <summary>Water, or what was lost in drying.</summary>
    internal double? AllWater => Water ?? Dried?.LossPerHundred;

    /// <summary>Salt, or what the sodium comes to as salt (sodium x 2.54).</summary>
    internal double? AllSalt => Salt ?? (SodiumMilligrams is { } sodium ? SaltOf(sodium) : null);

    /// <summary>The parts of 100 g that do not overlap and are known.</summary>
    internal double KnownSum =>
        (Fat ?? 0) + (Protein ?? 0) + (Carbohydrate ?? 0) + (Form == LabelForm.European ? Fibre ?? 0 : 0) + (Ash ?? AllSalt ?? 0) + (AllWater ?? 0) + (Alcohol ?? 0);

    internal static double SaltOf(double sodiumMilligrams) => sodiumMilligrams * 2.54 / 1000;
}
