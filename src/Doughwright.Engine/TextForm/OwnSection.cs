using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Ingredients of the author's own: what stands on their labels, in 100 g. A line that is not there is unknown.</summary>
internal static class OwnSection
{
    public const string CountsAs = "counts as";
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
    public const string Water = "water";
    public const string Alcohol = "alcohol";
    public const string Allergens = "allergens";
    public const string Piece = "piece";
    public const string None = "none";

    public static IReadOnlyList<string> Keys { get; } =
    [
        CountsAs, Fat, Carbohydrate, TotalCarbohydrate, CarbohydrateWithoutFibre, Sugars, Lactose, Fibre, Protein, Salt, Sodium, Water, Alcohol, Allergens, Piece,
    ];

    private static readonly string[] CarbohydrateKeys = [Carbohydrate, TotalCarbohydrate, CarbohydrateWithoutFibre];

    public static IReadOnlyList<OwnIngredient> Read(TextMapping? mapping, string place, FindingLog log, Region? region)
    {
        var own = new List<OwnIngredient>();
        var taken = new Dictionary<string, Position>();
        foreach (var entry in mapping?.Entries ?? [])
        {
            var isFirst = IdCheck.Take(entry, taken, place, log);
            var under = $"{place}.{Slug.Of(entry.Key)}";
            if (Section.KeysOf(entry, under, log) is { } keys && ReadOne(new(keys, under, log, Keys), entry, region) is { } one && isFirst)
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
            var label = one.Label;
            var isTotal = label.Form == LabelForm.UnitedStates;
            written.Keys(one.Name, new TreeBuilder()
                .Words(CountsAs, EnumWords<Role>.Of(label.Role))
                .Words(Fat, Grams(label.Fat))
                .Words(region == Region.UnitedStates ? CarbohydrateWithoutFibre : Carbohydrate, isTotal ? null : Grams(label.Carbohydrate))
                .Words(TotalCarbohydrate, isTotal ? Grams(label.Carbohydrate) : null)
                .Words(Sugars, Grams(label.Sugars))
                .Words(Lactose, Grams(label.Lactose))
                .Words(Fibre, Grams(label.Fibre))
                .Words(Protein, Grams(label.Protein))
                .Words(Salt, Grams(label.Salt))
                .Words(Sodium, label.SodiumMilligrams is { } sodium ? NumberText.Exact(sodium) + " mg" : null)
                .Words(Water, Grams(label.Water))
                .Words(Alcohol, Grams(label.Alcohol))
                .Words(Allergens, label.Allergens is { Count: 0 } ? None : label.Allergens is { } codes ? string.Join(", ", codes.Select(Spoken)) : null)
                .Words(Piece, one.Ingredient.Piece is { } piece ? ExactText.Of(piece) : null)
                .Mapping);
        }

        return written.Mapping;
    }

    private static OwnIngredient? ReadOne(Section section, TextEntry entry, Region? region)
    {
        var role = section.Words(CountsAs) is { } said ? RoleOf(said) : null;
        if (!section.Has(CountsAs))
        {
            section.Log.Fault(
                FormFaults.OwnRoleMissing,
                section.Place,
                entry.KeyPosition,
                ("name", entry.Key),
                ("known", string.Join(", ", EnumWords<Role>.All)));
        }

        // The first that stands there is taken; which of them the label has, only the author knows.
        string[] carbohydrates = [.. CarbohydrateKeys.Where(section.Has)];
        if (carbohydrates.Length > 1)
        {
            section.Log.Fault(FormFaults.OwnCarbohydrateTwice, section.PlaceOf(carbohydrates[1]), section.Entry(carbohydrates[1])!.KeyPosition);
        }

        var carbohydrate = carbohydrates.FirstOrDefault();

        var label = new Label
        {
            Name = entry.Key,
            Role = role ?? default,
            Form = carbohydrate == TotalCarbohydrate || (carbohydrate == Carbohydrate && region == Region.UnitedStates) ? LabelForm.UnitedStates : LabelForm.European,
            Fat = Part(section, Fat),
            Carbohydrate = carbohydrate is null ? null : Part(section, carbohydrate),
            Sugars = Part(section, Sugars),
            Lactose = Part(section, Lactose),
            Fibre = Part(section, Fibre),
            Protein = Part(section, Protein),
            Salt = Part(section, Salt),
            SodiumMilligrams = Part(section, Sodium) * 1000,
            Water = Part(section, Water),
            Alcohol = Part(section, Alcohol),
            Allergens = section.Items(Allergens) is { } allergens ? Codes(allergens) : null,
        };
        var piece = section.Words(Piece)?.Mass(Limits.Piece);
        var reading = label.Read();
        var figures = Keys.Where(key => key is not (CountsAs or Allergens or Piece));
        foreach (var fault in reading.Faults.Where(fault => fault.Kind != LabelFaultKind.NothingSaid || !figures.Any(section.Has)))
        {
            var key = section.Entry(KeyOf(fault.Entry, carbohydrate))?.KeyPosition ?? entry.KeyPosition;
            section.Log.Wrong(
                KindOf(fault.Kind),
                section.Place,
                key,
                ("name", entry.Key),
                ("entry", KeyOf(fault.Entry, carbohydrate)),
                ("value", Mass.FromGrams(fault.Grams)),
                ("limit", Mass.FromGrams(fault.Limit)));
        }

        return role is null ? null : OwnIngredient.Of(label, piece, entry.KeyPosition);
    }

    private static double? Part(Section section, string key) => section.Words(key)?.Mass()?.Grams;

    private static string? Grams(double? grams) => grams is { } known ? NumberText.Exact(known) + " g" : null;

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

    private static string Spoken(string code) => code.Replace('-', ' ');

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
