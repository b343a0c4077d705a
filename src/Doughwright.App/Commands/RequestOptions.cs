using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Commands;

/// <summary>What a command line asks of a rehearsal.</summary>
internal static class RequestOptions
{
    private static readonly Dictionary<string, MixingWay> Ways = new()
    {
        ["hand"] = MixingWay.ByHand,
        ["by hand"] = MixingWay.ByHand,
        ["machine"] = MixingWay.Machine,
        ["food processor"] = MixingWay.FoodProcessor,
    };

    /// <param name="kitchen">The kitchen asked for; null is the recipe's home.</param>
    public static Request Read(Given given, Options options, Recipe recipe, Kitchen? kitchen)
    {
        var names = new Names(recipe, given.Faults);
        var dough = given.Temperature(options.Dough, Limits.Matter);
        var (variants, ways) = Variants(given, options, names);
        return new()
        {
            Kitchen = kitchen,
            At = At(given, options, names),
            Pour = given.Temperature(options.Pour, Limits.Matter),
            Bowls = Bowls(given, options, names),
            Ways = ways,
            Variants = variants,
            Weighed = WeighedText.Read(given, options, names),
            Dough = dough,
            Free = Free(given, options, names),
        };
    }

    /// <summary>Water, up to where it boils in the kitchen. A thermometer in whole degrees shows 100 for 99.98, and that may be typed.</summary>
    public static Limit<Temperature> Pourable(Temperature boils) =>
        new("pour-outside-limits", Temperature.FromCelsius(0), Temperature.FromCelsius(Math.Max(boils.Celsius, Math.Round(boils.Celsius))));

    private static Dictionary<string, Temperature> At(Given given, Options options, Names names)
    {
        var at = new Dictionary<string, Temperature>();
        foreach (var (name, value) in given.Pairs(options.At))
        {
            var line = names.Line(options.At.Name, name);
            var temperature = given.Temperature(options.At.Name, value, Limits.Line);
            if (line is not null && temperature is { } warmth && !at.TryAdd(line, warmth))
            {
                given.Faults.Add("name-twice", ("option", options.At.Name), ("name", name));
            }
        }

        return at;
    }

    private static Dictionary<string, Vessel> Bowls(Given given, Options options, Names names)
    {
        var bowls = new Dictionary<string, Vessel>();
        foreach (var (name, value) in given.Pairs(options.Bowl))
        {
            var step = names.Step(options.Bowl.Name, name);
            var written = step?.Vessel is { IsNone: false } vessel ? vessel.Shape : VesselShape.Bowl;
            if (BowlText.Read(given, options.Bowl.Name, value, written) is { } bowl && step is not null && !bowls.TryAdd(step.Id, bowl))
            {
                given.Faults.Add("name-twice", ("option", options.Bowl.Name), ("name", name));
            }
        }

        return bowls;
    }

    /// <summary>The variants that the text has, and ways of mixing that it says nothing of.</summary>
    private static (Dictionary<string, string> Variants, Dictionary<string, MixingWay> Ways) Variants(Given given, Options options, Names names)
    {
        var variants = new Dictionary<string, string>();
        var ways = new Dictionary<string, MixingWay>();
        foreach (var (name, value) in given.Pairs(options.Variant))
        {
            if (names.StepOfWays(options.Variant.Name, name) is not { } step)
            {
                continue;
            }

            if (variants.ContainsKey(step.Id) || ways.ContainsKey(step.Id))
            {
                given.Faults.Add("name-twice", ("option", options.Variant.Name), ("name", name));
            }
            else if (VariantOf(step, value) is { } variant)
            {
                variants.Add(step.Id, variant.Id);
            }
            else if (Names.IsMixed(step) && Ways.TryGetValue(value.Replace('-', ' '), out var way))
            {
                ways.Add(step.Id, way);
            }
            else
            {
                string[] known = [.. step.Variants.Select(other => other.Id), .. Names.IsMixed(step) ? Ways.Keys.AsEnumerable() : []];
                given.Faults.AddUnknown("variant-unknown", value, [.. known.Distinct()], ("option", options.Variant.Name), ("step", step.Id));
            }
        }

        return (variants, ways);
    }

    /// <summary>By its id, or by the name it has for readers.</summary>
    private static StepVariant? VariantOf(Step step, string value) =>
        step.FindVariant(Slug.Of(value)) ?? step.Variants.FirstOrDefault(variant => variant.Step.Name != step.Name && Slug.Of(variant.Step.Name) == Slug.Of(value));

    private static List<string> Free(Given given, Options options, Names names)
    {
        var free = new List<string>();
        foreach (var name in given.All(options.Free).SelectMany(text => text.Split(',')))
        {
            if (names.LineOfDough(options.Free.Name, name.Trim()) is { } line && !free.Contains(line))
            {
                free.Add(line);
            }
        }

        if (given.Has(options.Dough) && !given.Has(options.Free))
        {
            given.Faults.Add("dough-without-free", ("option", options.Free.Name));
        }

        if (given.Has(options.Free) && !given.Has(options.Dough))
        {
            given.Faults.Add("free-without-dough", ("option", options.Dough.Name));
        }

        return free;
    }
}
