using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What is known of an own ingredient beside its figures, sentence by sentence: said alike by the command and by the desk.</summary>
internal static class OwnFacts
{
    /// <summary>Steps of scales that people have.</summary>
    private static readonly Mass[] Scales = [Mass.FromGrams(1), Mass.FromGrams(0.1)];

    /// <summary>Where its figures come from, and what is unknown.</summary>
    public static string From(OwnIngredient own, Voice voice) => string.Join(' ', FromAll(own, voice));

    /// <summary>Its lot and water, allergens, what one weighs, and what a line of this name gets.</summary>
    public static IReadOnlyList<string> All(OwnIngredient own, Larder shipped, Voice voice)
    {
        var facts = new List<string>();
        if (own.Lot is { } lot)
        {
            facts.Add(voice.Say("larder.lot", ("lot", lot)));
        }

        if (own.Absorption is { } absorption)
        {
            facts.Add(absorption.Words is { } words
                ? voice.Say("larder.absorption-how", ("share", absorption.Share), ("how", words))
                : voice.Say("larder.absorption", ("share", absorption.Share)));
        }

        if (own.Ingredient.Piece is { } piece)
        {
            facts.Add(voice.Say("larder.piece", ("weight", piece)));
        }

        facts.Add(!own.Ingredient.AllergensKnown ? voice.Words["larder.own-allergens-unsaid"]
            : voice.Say("larder.own-allergens", ("allergens", LarderWords.Listed(own.Ingredient.Allergens, voice))));
        facts.Add(shipped.Find(own.Name, []).Ingredient is { } other
            ? voice.Say("larder.own-before", ("name", own.Name), ("other", other.Name))
            : voice.Say("larder.own-lines", ("name", own.Name)));
        return facts;
    }

    private static IEnumerable<string> FromAll(OwnIngredient own, Voice voice)
    {
        var label = own.Label;
        if (own.Made is { } made)
        {
            yield return voice.Say(
                "larder.made",
                ("before", made.Weighed.Before),
                ("after", made.Weighed.After),
                ("what", made.What),
                ("left", Percent.FromFraction(made.Weighed.Left)));
            yield return voice.Words["larder.made-only"];
        }
        else
        {
            yield return label.HundredMillilitres is { } weigh ? voice.Say("larder.from-label-ml", ("weight", Mass.FromGrams(weigh))) : voice.Words["larder.from-label"];
        }

        if (label.Dried is { } dried)
        {
            yield return voice.Say("larder.dried", ("before", dried.Before), ("after", dried.After));
            foreach (var scale in Scales.Where(scale => scale < dried.Before))
            {
                var (low, high) = dried.LossOnAScaleOf(scale);
                yield return voice.Say("larder.dried-scale", ("scale", scale), ("low", Percent.FromValue(low)), ("high", Percent.FromValue(high)));
            }
        }
        else if (own.Made is null && label.Water is null)
        {
            yield return own.Ingredient.Composition.Water is null ? voice.Words["larder.water-unknown"]
                : voice.Words[label.Ash is null ? "larder.water-left-ash" : "larder.water-left"];
        }

        if (Unknown(own, voice) is { Length: > 0 } unknown)
        {
            yield return voice.Say("larder.unknown", ("parts", unknown));
        }
    }

    private static string[] Unknown(OwnIngredient own, Voice voice)
    {
        var c = own.Ingredient.Composition;
        var carbohydrate = own.Label.CarbohydrateWithoutFibre is null ? "carbohydrate" : "carbohydrate-with-fibre";
        (string Key, double? Share)[] parts =
        [
            ("water", c.Water), ("protein", c.Protein), ("fat", c.Fat), (carbohydrate, c.Carbohydrate), ("sugars", c.Sugars), ("lactose", c.Lactose), ("fibre", c.Fibre), ("ash", c.Ash),
            ("salt", c.Salt),
        ];
        return [.. parts.Where(part => part.Share is null).Select(part => voice.Words["larder.part." + part.Key])];
    }
}
