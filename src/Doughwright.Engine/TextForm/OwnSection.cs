using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Ingredients of the author's own: what stands on their labels, in 100 g. A line that is not there is unknown.</summary>
internal static class OwnSection
{
    public const string CountsAs = "counts as";
    public const string Lot = "lot";

    /// <summary>With it the figures are those of 100 ml.</summary>
    public const string HundredMillilitres = "100 ml weigh";
    public const string Fat = "fat";
    public const string Carbohydrate = "carbohydrate";

    /// <summary>As labels of the United States have it, with the fibre in it.</summary>
    public const string TotalCarbohydrate = "total carbohydrate";

    /// <summary>As European labels have it, in a recipe of the United States, where the plain word holds the fibre.</summary>
    public const string CarbohydrateWithoutFibre = "carbohydrate without fibre";

    public const string Sugars = "of which sugars";
    public const string Lactose = "of which lactose";
    public const string Fibre = "fibre";
    public const string Protein = "protein";
    public const string Salt = "salt";
    public const string Sodium = "sodium";
    public const string Ash = "ash";
    public const string Water = "water";
    public const string Dried = "dried";
    public const string Alcohol = "alcohol";
    public const string MadeFrom = "made from";
    public const string Weighed = "weighed";
    public const string Absorption = "absorption";
    public const string Allergens = "allergens";
    public const string Piece = "piece";
    public const string None = "none";

    public static IReadOnlyList<string> Keys { get; } =
    [
        CountsAs, Lot, HundredMillilitres, Fat, Carbohydrate, TotalCarbohydrate, CarbohydrateWithoutFibre, Sugars, Lactose, Fibre, Protein, Salt, Sodium, Ash, Water,
        Dried, Alcohol, MadeFrom, Weighed, Absorption, Allergens, Piece,
    ];

    /// <summary>What a label says in figures.</summary>
    private static readonly string[] Figures =
        [HundredMillilitres, Fat, Carbohydrate, TotalCarbohydrate, CarbohydrateWithoutFibre, Sugars, Lactose, Fibre, Protein, Salt, Sodium, Ash, Water, Dried, Alcohol];

    private static readonly string[] CarbohydrateKeys = [Carbohydrate, TotalCarbohydrate, CarbohydrateWithoutFibre];

    public static IReadOnlyList<OwnIngredient> Read(TextMapping? mapping, string place, FindingLog log, Region? region)
    {
        var own = new List<OwnIngredient>();
        var taken = new Dictionary<string, Position>();
        foreach (var entry in mapping?.Entries ?? [])
        {
            var isFirst = IdCheck.Take(entry, taken, place, log);
            var under = $"{place}.{Slug.Of(entry.Key)}";
            if (Section.KeysOf(entry, under, log) is { } keys && ReadOne(new(keys, under, log, Keys), entry.Key, entry.KeyPosition, region) is { } one && isFirst)
            {
                own.Add(one);
            }
        }

        return own;
    }

    public static TextMapping Write(IReadOnlyList<OwnIngredient> own, Region? region)
    {
        var written = new TreeBuilder();
        foreach (var one in own)
        {
            written.Keys(one.Name, OwnWriter.Over(new(), one, region).Mapping);
        }

        return written.Mapping;
    }

    /// <summary>One ingredient from the keys of a section; null where it is not said what it counts as.</summary>
    public static OwnIngredient? ReadOne(Section section, string name, Position position, Region? region)
    {
        var role = section.Words(CountsAs) is { } said ? RoleOf(said) : null;
        if (!section.Has(CountsAs))
        {
            section.Log.Fault(FormFaults.OwnRoleMissing, section.Place, position, ("name", name), ("known", string.Join(", ", EnumWords<Role>.All)));
        }

        // The first that stands there is taken; which of them the label has, only the author knows.
        string[] carbohydrates = [.. CarbohydrateKeys.Where(section.Has)];
        if (carbohydrates.Length > 1)
        {
            section.Log.Fault(FormFaults.OwnCarbohydrateTwice, section.PlaceOf(carbohydrates[1]), section.Entry(carbohydrates[1])!.KeyPosition);
        }

        var carbohydrate = carbohydrates.FirstOrDefault();
        var label = ReadLabel(section, name, role ?? default, carbohydrate, region);
        var piece = section.Words(Piece)?.Mass(Limits.Piece);
        var made = OwnGrammar.Made(section, name, region);
        var lot = section.Words(Lot)?.Text is { Length: > 0 } words ? words : null;
        var absorption = section.Words(Absorption) is { } takes ? OwnGrammar.Absorption(takes) : null;
        if (section.Has(MadeFrom) || section.Has(Weighed))
        {
            TellFigures(section, name);
        }
        else
        {
            TellLabel(section, label, position, carbohydrate);
        }

        return role is null ? null : OwnIngredient.Of(label, piece, position, made, region) with { Lot = lot, Absorption = absorption };
    }

    private static Label ReadLabel(Section section, string name, Role role, string? carbohydrate, Region? region)
    {
        var dried = section.Words(Dried) is { } words ? OwnGrammar.Dried(words) : null;
        if (section.Has(Dried) && section.Has(Water))
        {
            section.Log.Wrong(FormFaults.OwnWaterTwice, section.PlaceOf(Dried), section.Entry(Dried)!.KeyPosition, ("name", name));
        }

        return new()
        {
            Name = name,
            Role = role,
            Form = carbohydrate == TotalCarbohydrate || (carbohydrate == Carbohydrate && region == Region.UnitedStates) ? LabelForm.UnitedStates : LabelForm.European,
            HundredMillilitres = section.Words(HundredMillilitres)?.Mass(Limits.HundredMillilitres) is { } weigh && Limits.HundredMillilitres.Holds(weigh) ? weigh.Grams : null,
            Fat = Part(section, Fat),
            Carbohydrate = carbohydrate is null ? null : Part(section, carbohydrate),
            Sugars = Part(section, Sugars),
            Lactose = Part(section, Lactose),
            Fibre = Part(section, Fibre),
            Protein = Part(section, Protein),
            Salt = Part(section, Salt),
            SodiumMilligrams = Part(section, Sodium) * 1000,
            Ash = Part(section, Ash),
            Water = Part(section, Water),
            Dried = dried,
            Alcohol = Part(section, Alcohol),
            Allergens = section.Items(Allergens) is { } allergens ? Codes(allergens) : null,
        };
    }

    /// <summary>Tells what on a label cannot be true.</summary>
    private static void TellLabel(Section section, Label label, Position position, string? carbohydrate)
    {
        foreach (var fault in label.Read().Faults.Where(fault => fault.Kind != LabelFaultKind.NothingSaid || !Figures.Any(section.Has)))
        {
            section.Log.Wrong(
                KindOf(fault.Kind),
                section.Place,
                section.Entry(KeyOf(fault.Entry, carbohydrate))?.KeyPosition ?? position,
                ("name", label.Name),
                ("entry", KeyOf(fault.Entry, carbohydrate)),
                ("value", Mass.FromGrams(fault.Grams)),
                ("limit", Mass.FromGrams(fault.Limit)));
        }
    }

    /// <summary>What is made from something has its figures from that, and none of its own.</summary>
    private static void TellFigures(Section section, string name)
    {
        foreach (var figure in Figures.Where(section.Has))
        {
            section.Log.Wrong(FormFaults.MadeAndLabel, section.PlaceOf(figure), section.Entry(figure)!.KeyPosition, ("name", name), ("entry", figure));
        }
    }

    private static double? Part(Section section, string key) => section.Words(key)?.Mass()?.Grams;

    private static Role? RoleOf(Phrase said)
    {
        if (EnumWords<Role>.Find(said.Text) is { } role)
        {
            return role;
        }

        said.Log.Fault(FormFaults.UnknownRole, said.Place, said.Position, Phrase.UnknownWord(said.Text, [.. EnumWords<Role>.All]));
        return null;
    }

    /// <summary>"wheat gluten, milk", "soy?" where it depends on the supplier, "none".</summary>
    private static IReadOnlyList<string> Codes(IReadOnlyList<Phrase> said)
    {
        var codes = new List<string>();
        if (said is [{ Text: None }])
        {
            return codes;
        }

        foreach (var word in said)
        {
            var depends = word.Text.EndsWith('?');
            var code = Slug.Of(word.Text.TrimEnd('?'));
            if (AllergenNames.Codes.Contains(code))
            {
                codes.Add(depends ? code + "?" : code);
            }
            else
            {
                word.Log.Fault(
                    FormFaults.UnknownAllergen, word.Place, word.Position, Phrase.UnknownWord(word.Text, [.. AllergenNames.Codes.Select(Spoken)]));
            }
        }

        return codes;
    }

    public static string Spoken(string code) => code.Replace('-', ' ');

    private static string KeyOf(string entry, string? carbohydrate) => entry switch
    {
        "carbohydrate" => carbohydrate ?? Carbohydrate,
        "sugars" => Sugars,
        "lactose" => Lactose,
        _ => entry,
    };

    private static string KindOf(LabelFaultKind kind) => kind switch
    {
        LabelFaultKind.NothingSaid => FormFaults.LabelSaysNothing,
        LabelFaultKind.BelowZero => FormFaults.LabelBelowZero,
        LabelFaultKind.AboveHundred => FormFaults.LabelAboveHundred,
        LabelFaultKind.PartAboveWhole => FormFaults.LabelPartAboveWhole,
        LabelFaultKind.SumAboveHundred => FormFaults.LabelSumAboveHundred,
        LabelFaultKind.SaltAndSodiumDiffer => FormFaults.LabelSaltAndSodium,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such fault of a label."),
    };
}
