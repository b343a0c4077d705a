using System.Globalization;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>A recipe as a tree, in the order of the form.</summary>
internal static class RecipeWriter
{
    public static TextMapping Write(Recipe recipe) => new TreeBuilder()
        .Words(FormLine.Key, FormLine.Form.ToString(CultureInfo.InvariantCulture))
        .Words(RecipeText.Title, recipe.Title.Length == 0 ? null : recipe.Title)
        .Words(RecipeText.Region, recipe.Region is { } region ? RegionCodes.CodeOf(region) : null)
        .Words(RecipeText.Make, recipe.Make is { } make ? Make(make) : null)
        .Prose(RecipeText.Words, recipe.Words)
        .Photos(recipe.Photos)
        .Keys(RecipeText.Home, KitchenWriter.Home(recipe.Home))
        .List(RecipeText.Tools, recipe.Tools)
        .Keys(RecipeText.Own, OwnSection.Write(recipe.Own, recipe.Region))
        .Keys(RecipeText.Parts, Parts(recipe.Components, recipe.LarderOver(Larder.Shipped)))
        .Keys(RecipeText.Steps, Steps(recipe))
        .Keys(RecipeText.Without, AdviceSections.Write(recipe.Without))
        .List(RecipeText.Swaps, [.. recipe.Swaps.Select(SwapGrammar.Write)])
        .List(RecipeText.Keeping, [.. recipe.Keeping.Select(KeepingGrammar.Write)])
        .Keys(RecipeText.Accepted, AcceptedSection.Write(recipe.Accepted))
        .Mapping;

    private static string Make(Make make) =>
        FormattableString.Invariant($"{make.Pieces} {make.What}{MakeGrammar.Of}{ExactText.Of(make.PieceMass)}");

    private static TextMapping Parts(IReadOnlyList<Component> components, Larder larder)
    {
        var parts = new TreeBuilder();
        foreach (var component in components)
        {
            var part = new TreeBuilder()
                .Words(PartsSection.Kind, EnumWords<ComponentKind>.Of(component.Kind) is var kind && kind == component.Id ? null : kind)
                .Words(PartsSection.Name, component.Name == Slug.InWords(component.Id) ? null : component.Name)
                .Words(PartsSection.Base, component.Base is { } basis ? component.Lines.FirstOrDefault(line => line.Id == basis)?.Name : null);
            foreach (var line in TypedShares.Held(component, larder).Lines)
            {
                part.Words(line.Name, Line(line, larder));
            }

            parts.Keys(component.Id, part.Mapping);
        }

        return parts.Mapping;
    }

    private static TextMapping Steps(Recipe recipe)
    {
        var steps = new TreeBuilder();
        foreach (var step in recipe.Steps)
        {
            steps.Keys(step.Id, StepWriter.Write(step, recipe.FindComponent(step.Component)));
        }

        return steps.Mapping;
    }

    private static string Line(Line line, Larder larder) => string.Join(", ", [MeasureGrammar.Typed(line, larder) ?? Quantity(line), .. Rest(line)]);

    /// <summary>What a line says behind its amount: its condition, how warm it goes in, what it counts as, what was weighed.</summary>
    public static IEnumerable<string> Rest(Line line)
    {
        var warmth = line.Warmth.Kind switch
        {
            WarmthKind.Boiling => LineGrammar.Boiling,
            WarmthKind.Fridge => LineGrammar.FromTheFridge,
            WarmthKind.Tap => LineGrammar.FromTheTap,
            WarmthKind.Stated => $"{StepGrammar.At} {ExactText.Of(line.Warmth.Stated!.Value)}",
            _ => null,
        };
        var role = line.CountsAs is { } counts ? $"{LineGrammar.CountsAs} {counts}" : null;
        string?[] words = [.. line.Conditions, warmth, role, line.Weighed is { } weighed ? Weighed(weighed) : null];
        return words.OfType<string>();
    }

    private static string Weighed(Weighed weighed)
    {
        var (raw, cooked) = (ExactText.Of(weighed.RawPeeled), ExactText.Of(weighed.Cooked));
        return $"{LineGrammar.Weighed} {raw} {LineGrammar.Peeled}{MeasuredGrammar.And}{cooked} {LineGrammar.Cooked}";
    }

    /// <summary>What was typed, as long as it still says the mass.</summary>
    private static string Quantity(Line line) => line.Share is { } share ? QuantityText.TryPercent(line.Typed).Value == share ? line.Typed : $"{NumberText.Exact(share.Value)} %"
        : line.Mass is not { } mass ? LineGrammar.AllOfIt
        : QuantityText.TryMass(line.Typed).Value == mass ? line.Typed
        : ExactText.Of(mass);
}
