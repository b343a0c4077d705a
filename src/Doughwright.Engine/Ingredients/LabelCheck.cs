namespace Doughwright.Engine.Ingredients;

/// <summary>What on a label cannot be true.</summary>
internal sealed class LabelCheck(Label label)
{
    // Salt is printed to 0.1 g or 0.01 g, sodium to 5 mg.
    private const double SaltRounding = 0.1;

    private readonly List<LabelFault> faults = [];

    public IReadOnlyList<LabelFault> Faults()
    {
        (string Name, double? Grams)[] entries =
        [
            ("fat", label.Fat), ("carbohydrate", label.Carbohydrate), ("sugars", label.Sugars), ("fibre", label.Fibre), ("protein", label.Protein),
            ("salt", label.Salt), ("sodium", label.SodiumMilligrams / 1000), ("water", label.AllWater), ("lactose", label.Lactose), ("alcohol", label.Alcohol), ("ash", label.Ash),
        ];
        if (entries.All(entry => entry.Grams is null))
        {
            Say(LabelFaultKind.NothingSaid, "all", 0, 0);
        }

        foreach (var (name, grams) in entries)
        {
            if (grams is < 0)
            {
                Say(LabelFaultKind.BelowZero, name, grams.Value, 0);
            }
            else if (grams is not (null or <= 100))
            {
                Say(LabelFaultKind.AboveHundred, name, grams.Value, 100);
            }
        }

        if (faults.Count == 0)
        {
            Part("sugars", label.Sugars, label.Carbohydrate);
            Part("lactose", label.Lactose, label.Sugars);
            Part("fibre", label.Form == LabelForm.UnitedStates ? label.Fibre : null, label.Carbohydrate);
            Part("salt", label.AllSalt, label.Ash);
            Sum();
        }

        return faults;
    }

    private void Part(string name, double? part, double? whole)
    {
        if (part is { } held && whole is { } holding && held > holding + Label.Rounding)
        {
            Say(LabelFaultKind.PartAboveWhole, name, held, holding);
        }
    }

    private void Sum()
    {
        if (label.KnownSum > Label.MostSum)
        {
            Say(LabelFaultKind.SumAboveHundred, "all", label.KnownSum, 100);
        }

        if (label is { Salt: { } salt, SodiumMilligrams: { } sodium } && Math.Abs(salt - Label.SaltOf(sodium)) > SaltRounding + (0.05 * salt))
        {
            Say(LabelFaultKind.SaltAndSodiumDiffer, "salt", salt, Label.SaltOf(sodium));
        }
    }

    private void Say(LabelFaultKind kind, string entry, double grams, double limit) => faults.Add(new(kind, entry, grams, limit));
}
