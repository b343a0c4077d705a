using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Other ways to do a step: each says again what is done otherwise, and all else stays as in the step.</summary>
internal static class VariantsSection
{
    public const string Key = "variants";

    private static readonly string[] Keys = [.. StepKeys.All, StepsSection.Order];

    public static IReadOnlyList<StepVariant> Read(Section section, Step step, StepKind? kind, OrderReader orders, KitchenVessels vessels)
    {
        var variants = new List<StepVariant>();
        var taken = new Dictionary<string, Position>();
        var place = section.PlaceOf(Key);
        foreach (var entry in section.Keys(Key)?.Entries ?? [])
        {
            var isFirst = IdCheck.Take(entry, taken, place, section.Log);
            var id = Slug.Of(entry.Key);
            if (Section.KeysOf(entry, $"{place}.{id}", section.Log) is { } keys)
            {
                var said = new Section(keys, $"{place}.{id}", section.Log, Keys);
                var variant = StepKeys.Over(step, said, kind, vessels) with { Position = entry.KeyPosition };
                if (step.Component.Length > 0 && said.Items(StepsSection.Order) is { Count: > 0 } order)
                {
                    variant = variant with { Order = orders.ReadAgain(order, step.Component, step.Order) };
                }

                if (isFirst)
                {
                    variants.Add(new(id, variant));
                }
            }
        }

        return variants;
    }
}
