using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Recipes and kitchens as the reader could have built them.</summary>
internal static class RecipeGen
{
    private static readonly Gen<string> Word =
        Pick.From("warm", "old", "fine", "milk", "rye", "no", "stein", "café", "12", "#4", "a:b", "it's", "&", "\"so\"");

    /// <summary>Names with everything in them that could look like something else.</summary>
    private static readonly Gen<string> Name = Word.Array[1, 4].Select(words => string.Join(' ', words));

    private static readonly Gen<string> Prose = Gen.OneOf(
        Name,
        Name.Array[2, 4].Select(lines => string.Join('\n', lines)),
        Pick.From("Wait: it rises.", "- not a list", "one\n\n  two\nthree", "[bulk time] later", "'quoted'"),
        Pick.From("ends with:", "a # b", "|", "---"));

    private static readonly Gen<Mass> Mass = Gen.OneOf(
        Gen.Int[1, 5000].Select(grams => Engine.Quantities.Mass.FromGrams(grams)),
        Double(0.01, 4999).Select(Engine.Quantities.Mass.FromGrams));

    private static readonly Gen<Temperature> Warm = Gen.OneOf(
        Gen.Int[0, 40].Select(celsius => Temperature.FromCelsius(celsius)),
        Gen.Int[32, 100].Select(fahrenheit => Temperature.FromFahrenheit(fahrenheit)),
        Double(0, 12).Select(Temperature.FromCelsius));

    /// <summary>Cores of a bake.</summary>
    private static readonly Gen<Temperature> Hot = Double(50, 120).Select(Temperature.FromCelsius);

    private static readonly Gen<Duration> Time = Gen.OneOf(
        Gen.Int[1, 20_160].Select(minutes => Duration.FromMinutes(minutes)),
        Gen.Int[1, 14].Select(days => Duration.FromHours(days * 24)),
        Double(0.5, 600).Select(Duration.FromMinutes));

    private static readonly Gen<AirProfile> Air = Gen.Select(Warm, Warm.Array[0, 3], Gen.Int[1, 600]).Select((first, later, step) =>
        AirProfile.Of(later.Select((air, i) => (Duration.FromMinutes((i + 1) * step), air)).Prepend((Duration.Zero, first))));

    private static readonly Gen<OvenTraits> Traits =
        Gen.Select(Maybe(Gen.OneOf(Pick.From(0.0), Double(-60, 60))), Maybe(Gen.Int[2, 240]), Maybe(Gen.Int[1, 30]), Gen.Enum<OvenSteam>(), Maybe(Gen.Enum<HearthMaterial>()), Maybe(Gen.Int[2, 100]))
            .Select((off, heats, recovers, steam, hearth, thick) => new OvenTraits
            {
                OffDial = off is { } kelvins ? TemperatureDelta.FromKelvins(kelvins) : null,
                HeatsIn = heats is { } minutes ? Duration.FromMinutes(minutes) : null,
                RecoversIn = recovers is { } back ? Duration.FromMinutes(back) : null,
                Steam = steam,
                Hearth = hearth is { } material ? new(material, thick is { } millimetres ? Length.FromMillimetres(millimetres) : null) : null,
            });

    public static Gen<Kitchen> Kitchen { get; } =
        Gen.Select(PlainKitchen(), Traits, Gen.Int[0, 3], Gen.Enum<VesselMaterial>(), Mass, Gen.Int[1, 90]).Select((kitchen, traits, vessels, material, mass, tenths) => kitchen with
        {
            OvenTraits = traits,
            Vessels = KitchenVessels.Of(new[] { "the big bowl", "aunt's tin", "no" }.Take(vessels).Select((name, index) =>
                new Vessel((VesselShape)index, index == 2 ? null : material, index == 1 ? null : mass, false) { Name = name, Size = index == 0 ? new(null, null, null, Volume.FromLitres(tenths / 10.0)) : null })),
        });

    private static Gen<Kitchen> PlainKitchen() =>
        Gen.Select(Name, Air, Double(-430, 5000), Gen.Enum<OvenMode>(), Gen.Int[1, 9], Maybe(Warm), Maybe(Warm), Double(-2, 12))
            .Select((name, air, altitude, oven, trays, shelf, proof, fridge) => new Kitchen
            {
                Name = name,
                Air = air,
                Altitude = Length.FromMetres(altitude),
                Fridge = Temperature.FromCelsius(fridge),
                Oven = oven,
                Trays = trays,
                Ingredients = shelf,
                ProofingPlace = proof,
            });

    private static readonly Gen<LineWarmth> Warmth = Gen.OneOf(
        Warm.Select(LineWarmth.At),
        Pick.From(WarmthKind.AsTheRoom, WarmthKind.Boiling, WarmthKind.Fridge, WarmthKind.Tap).Select(kind => new LineWarmth(kind, null)));

    private static readonly Gen<Line> Line =
        Gen.Select(
            Name,
            Gen.OneOf(Mass.Select(ExactText.Of), Pick.From("4 oz", "1 lb 4 oz", "1,200 g", "0.5 kg", "7g")),
            Pick.From("soft", "raw", "peeled", "from my own garden").Array[0, 3],
            Warmth,
            Pick.From<string?>(null, "liquid", "flour"),
            Maybe(Gen.Select(Mass, Mass)))
            .Select((name, typed, conditions, warmth, role, weighed) => new Line
            {
                Id = Slug.Of(name),
                Name = name,
                Mass = QuantityText.TryMass(typed).Value,
                Typed = typed,
                Conditions = conditions,
                Warmth = warmth,
                CountsAs = role,
                Weighed = weighed is var (raw, cooked) ? new(raw, cooked) : null,
                Position = Position.None,
            });

    /// <summary>What people measure in a kitchen, with what the larder says of it.</summary>
    private static readonly Gen<Line> Spooned =
        Gen.Select(Pick.From(("sugar", "tbsp"), ("salt", "tsp"), ("butter", "US cup"), ("egg", "US large")), Pick.From("1", "2", "0.5", "1.25"))
            .Select((what, amount) =>
            {
                var larder = Engine.Ingredients.Larder.Shipped;
                var measure = larder.MeasureOf(larder.Find(what.Item1, []).Ingredient!, what.Item2).Measure!;
                var many = QuantityText.TryNumber(amount).Value!.Value;
                return new Line
                {
                    Id = what.Item1,
                    Name = what.Item1,
                    Mass = measure.Mass * many,
                    Typed = $"{amount} {what.Item2}",
                    Household = new(many, measure.Unit),
                    Position = Position.None,
                };
            });

    private static readonly Gen<Engine.Ingredients.Weighings> Weighings = Gen.Select(Double(1, 4000), Double(0.1, 1)).Select((before, left) =>
        new Engine.Ingredients.Weighings(Engine.Quantities.Mass.FromGrams(before), Engine.Quantities.Mass.FromGrams(Math.Max(0.1, before * left))));

    /// <summary>What its own weighings, a lot and a mill say of it.</summary>
    private static Gen<OwnIngredient> Told(OwnIngredient own) =>
        Gen.Select(
            Gen.Select(Maybe(Double(10, 200)), Maybe(Double(0, 2)), Gen.Int[0, 3], Weighings, Double(0.2, 1)),
            Gen.Select(MaybeText(Pick.From("bag of 3 November", "no", "12: old")), Maybe(Double(30, 120)), MaybeText(Pick.From("farinograph at 14 % moisture", "by feel, twice"))))
            .Select((figures, words) =>
            {
                // 100 ml that hold much weigh no little.
                var label = own.Label with { HundredMillilitres = figures.Item1 is > 100 and var weigh ? weigh : null, Ash = figures.Item2 is { } ash ? ash : null };
                label = figures.Item3 == 1 && label.Water is null ? label with { Dried = new(figures.Item4.Before, figures.Item4.Before * 0.95 + figures.Item4.After * 0.05) } : label;
                var bare = new Engine.Ingredients.Label { Name = own.Name, Role = own.Label.Role, Allergens = own.Label.Allergens };
                // Butter is four fifths fat and solids, so no more than a fifth of it can go.
                var made = new Engine.Ingredients.MadeFrom(figures.Item3 == 2 ? "unsalted butter" : "potato, raw", new(figures.Item4.Before, figures.Item4.Before * (0.85 + (0.15 * figures.Item5))));
                return (figures.Item3 < 2 ? OwnIngredient.Of(label, own.Ingredient.Piece, Position.None) : OwnIngredient.Of(bare, own.Ingredient.Piece, Position.None, made)) with
                {
                    Lot = words.Item1,
                    Absorption = words.Item2 is { } share ? new(Percent.FromValue(share), words.Item3) : null,
                };
            });

    private static readonly Gen<OwnIngredient> Own =
        Gen.Select(
            Gen.Select(Name, Gen.Enum<Engine.Ingredients.Role>(), Gen.Enum<Engine.Ingredients.LabelForm>(), Maybe(Mass)),
            Gen.Select(Maybe(Double(0, 20)), Maybe(Double(0, 20)), Maybe(Double(0, 9)), Maybe(Double(0, 9)), Maybe(Double(0, 20))),
            Pick.From<string[]?>(null, [], ["milk"], ["wheat-gluten", "soy?"]))
            .Select((who, what, allergens) => OwnIngredient.Of(
                new()
                {
                    Name = who.Item1,
                    Role = who.Item2,
                    Form = what.Item2 is null ? Engine.Ingredients.LabelForm.European : who.Item3,
                    Fat = what.Item1,
                    Carbohydrate = what.Item2,
                    Sugars = what.Item3,
                    Fibre = what.Item4,
                    Protein = what.Item5 ?? 1,
                    Allergens = allergens,
                },
                who.Item4 is { } piece && Limits.Piece.Holds(piece) ? piece : null,
                Position.None))
            .SelectMany(Told);

    public static Gen<OwnIngredient> OwnIngredients { get; } = Own.Where(one => Slug.Of(one.Name).Length > 0);

    // Where spoons are those of the generated lines.
    private static readonly Gen<Engine.Ingredients.Region?> Regions =
        Pick.From<Engine.Ingredients.Region?>(null, Engine.Ingredients.Region.Britain, Engine.Ingredients.Region.UnitedStates);

    private static readonly Gen<OwnIngredient[]> Owns = Own.Array[0, 2]
        .Select(all => all.Where(one => Slug.Of(one.Name).Length > 0).DistinctBy(one => Slug.Of(one.Name)).ToArray());

    private static readonly Gen<StepEnd?> End = Gen.OneOf<StepEnd?>(
        Pick.From<StepEnd?>((StepEnd?)null),
        Time.Select(time => (StepEnd?)new StepEnd.AfterTime(time)),
        Warm.Select(warm => (StepEnd?)new StepEnd.AtTemperature(warm)),
        Double(1.05, 20).Select(times => (StepEnd?)new StepEnd.AtGrowth(times)),
        Hot.Select(core => (StepEnd?)new StepEnd.AtCore(core)),
        Time.Select(time => (StepEnd?)new StepEnd.ByCue(time)),
        Maybe(Time).Select(time => (StepEnd?)new StepEnd.WhenRipe(time)));

    private static readonly Gen<(Measured? Baked, Measured? Other)> Measured = Gen.Select(MeasuredAt(Hot), MeasuredAt(Warm));

    private static Gen<Measured?> MeasuredAt(Gen<Temperature> temperatures) =>
        Gen.Select(Maybe(Time), Maybe(temperatures), Pick.From<string?>(null, "9 November", "Monday, late"), Gen.Int[1, 4])
            .Select((time, warm, on, times) => time is null && warm is null ? null : new Measured(time, warm, on, times))
            .SelectMany(measured => Maybe(Warm).Select(room => measured is null ? null : measured with { Air = room }));

    private static readonly Gen<Length> Side = Gen.OneOf(
        Gen.Int[1, 600].Select(millimetres => Length.FromMillimetres(millimetres)),
        Gen.Int[1, 20].Select(inches => QuantityText.TryLength($"{inches} in").Value!.Value),
        Double(0.001, 2).Select(Length.FromMetres));

    /// <summary>A box, a floor, a round one, a volume, or nothing said.</summary>
    private static readonly Gen<Func<VesselShape, VesselSize?>> Size = Gen.Select(Side, Side, Side, Double(0.001, 300), Gen.Int[0, 3])
        .Select<(Length, Length, Length, double, int), Func<VesselShape, VesselSize?>>(sides => shape => sides.Item5 switch
        {
            0 => null,
            1 => new(sides.Item1, sides.Item2, sides.Item3, null),
            2 => shape == VesselShape.Tray ? new(sides.Item1, sides.Item2, null, null) : new(sides.Item1, null, sides.Item3, null),
            _ => new(null, null, null, Volume.FromLitres(sides.Item4)),
        });

    private static readonly Gen<Vessel?> Vessel =
        Gen.Select(Gen.Enum<VesselShape>(), Maybe(Gen.Enum<VesselMaterial>()), Maybe(Mass), Gen.Select(Gen.Bool, Gen.Bool), Size)
            .Select((shape, material, mass, flags, size) => (warmed: flags.Item1, there: flags.Item2) is var (warmed, there) && !there ? null
                : shape == VesselShape.None ? Engine.Kitchens.Vessel.None
                : new Vessel(shape, material, mass, warmed) { Size = size(shape) });

    private static readonly Gen<Fold[]> Folds =
        Gen.Select(Time, Gen.OneOf(Pick.From(Duration.Zero), Time)).Select((after, hands) => new Fold(after, hands)).Array[0, 3];

    private static readonly Gen<OvenSetting?> Oven =
        Gen.Select(Gen.Int[180, 600], Maybe(Gen.Enum<OvenMode>()), Gen.Bool, Maybe(Gen.Int[80, 330]), Gen.Int[1, 720])
            .Select((fahrenheit, mode, there, then, after) => there
                ? new OvenSetting(Temperature.FromFahrenheit(fahrenheit), mode)
                {
                    Then = then is { } celsius ? new(Temperature.FromCelsius(celsius), Duration.FromMinutes(after)) : null,
                }
                : null);

    private static readonly Gen<(Duration? Steam, BakedOn On, Duration? LidOff)> InOven = Gen.Select(Maybe(Gen.Int[1, 720]), Gen.Enum<BakedOn>(), Maybe(Gen.Int[1, 720]))
        .Select((steam, on, lid) => (Minutes(steam), on, Minutes(lid)));

    private static Duration? Minutes(int? minutes) => minutes is { } time ? Duration.FromMinutes(time) : null;

    private static readonly Gen<string> Tool = Pick.From("knife", "two trays", "bowl, steel");

    private static readonly Gen<string> Link = Pick.From("scalding", "reading a proof", "bowls, warm and cold");

    private static readonly Gen<Step> Step =
        Gen.Select(
            Gen.Select(Gen.Enum<StepKind>(), Name, Gen.OneOf(Pick.From(Duration.Zero), Time), Gen.Enum<Where>(), Gen.Enum<Cover>()),
            Gen.Select(End, Measured, Vessel, Folds, Oven),
            Gen.Select(MaybeText(Prose), MaybeText(Prose), Tool.Array[0, 3], Maybe(Gen.Int[1, 9])),
            Gen.Select(Maybe(Gen.Enum<MixingWay>()), Maybe(Gen.Int[1, 300]), InOven, Link.Array[0, 3]))
            .Select((what, how, words, more) => new Step
            {
                Id = "",
                Component = "",
                Kind = what.Item1,
                Name = what.Item2,
                Hands = what.Item3,
                Where = what.Item4,
                Cover = what.Item5,
                End = how.Item1,
                Measured = what.Item1 == StepKind.Bake ? how.Item2.Baked : how.Item2.Other,
                Vessel = how.Item3,
                Folds = how.Item4,
                Oven = how.Item5,
                Cue = words.Item1,
                Words = words.Item2,
                Tools = words.Item3,
                Trays = words.Item4,
                Way = more.Item1,
                Depth = more.Item2 is { } millimetres ? Length.FromMillimetres(millimetres) : null,
                Steam = more.Item3.Steam,
                On = more.Item3.On,
                LidOff = more.Item3.LidOff,
                Learn = more.Item4,
                Position = Position.None,
            });

    /// <summary>A step with some things said again, as a variant says them. What was measured is its own.</summary>
    private static Gen<StepVariant> VariantOf(Step step) =>
        Gen.Select(Step, Gen.Int[0, 255], Pick.From("machine", "no fold", "in the other oven")).Select((other, said, name) => new StepVariant(
            Slug.Of(name),
            step with
            {
                Name = (said & 1) > 0 ? other.Name : step.Name,
                Hands = (said & 2) > 0 ? other.Hands : step.Hands,
                Way = (said & 4) > 0 ? other.Way ?? step.Way : step.Way,
                Where = (said & 8) > 0 ? other.Where : step.Where,
                Cover = (said & 8) > 0 ? other.Cover : step.Cover,
                Oven = (said & 16) > 0 ? other.Oven ?? step.Oven : step.Oven,
                Trays = (said & 16) > 0 ? other.Trays ?? step.Trays : step.Trays,
                Steam = (said & 16) > 0 ? other.Steam : step.Steam,
                On = (said & 16) > 0 ? other.On : step.On,
                LidOff = (said & 16) > 0 ? other.LidOff : step.LidOff,
                Vessel = (said & 16) > 0 ? other.Vessel ?? step.Vessel : step.Vessel,
                Depth = (said & 16) > 0 ? other.Depth ?? step.Depth : step.Depth,
                Folds = (said & 32) > 0 ? other.Folds : step.Folds,
                End = (said & 64) > 0 ? other.End ?? step.End : step.End,
                Measured = other.Kind == StepKind.Bake != (step.Kind == StepKind.Bake) ? null : other.Measured,
                Cue = (said & 128) > 0 ? other.Cue ?? step.Cue : step.Cue,
                Tools = (said & 128) > 0 ? other.Tools : step.Tools,
                Words = (said & 128) > 0 ? other.Words ?? step.Words : step.Words,
            }));

    private static readonly Gen<Step> StepWithVariants = Step.SelectMany(step => VariantOf(step).Array[0, 2].Select(variants =>
        step with { Variants = [.. variants.DistinctBy(variant => variant.Id)] }));

    private static readonly Gen<Without[]> Without = Gen.Select(Name, Prose)
        .Select((what, words) => new Without(what, words, Position.None)).Array[0, 3]
        .Select(all => all.Where(one => Slug.Of(one.What).Length > 0).DistinctBy(one => Slug.Of(one.What)).ToArray());

    private static readonly Gen<AllowedSwap[]> Swaps =
        Gen.Select(Name, Name, Pick.From<string?>(null, "part-0"), Pick.From<string?>(null, "3 May"), Pick.From<string?>(null, "in the end softer, 5 min", "not tried"))
            .Select((what, by, part, tried, words) => new AllowedSwap(what, by, part, Position.None) { Tried = tried, Words = words }).Array[0, 3];

    private static readonly Gen<KeepingAdvice[]> Keeping =
        Gen.Select(Pick.From("in a bag", "frozen, in slices", "at 5 C, covered: not long"), Maybe(Gen.Int[1, 17_520]))
            .Select((words, hours) => new KeepingAdvice(words, hours is { } time ? Duration.FromHours(time) : null, Position.None)).Array[0, 3];

    private static readonly Gen<Component> Component =
        Gen.Select(Gen.Enum<ComponentKind>(), Name, Gen.Frequency((5, Line), (1, Spooned)).Array[1, 5])
            .Select((kind, name, lines) =>
                new Component("", name, kind, [.. lines.Where(line => line.Id.Length > 0).DistinctBy(line => line.Id)], Position.None));

    public static Gen<Recipe> Recipe { get; } =
        Gen.Select(Name, Kitchen, Component.Array[1, 4], StepWithVariants.Array[0, 5], MaybeText(Prose), Gen.Bool).Select(Build)
            .SelectMany(recipe => Gen.Select(Without, Swaps, Keeping, Owns, Regions).Select((without, swaps, keeping, own, region) =>
                recipe with { Region = region, Without = without, Swaps = swaps, Keeping = keeping, Own = own }));

    private static Recipe Build(string title, Kitchen home, Component[] parts, Step[] steps, string? words, bool makes)
    {
        // Each part uses all of the one before it, so that parts inside parts are written and read too.
        var components = parts.Select((part, i) => part with
        {
            Id = $"part-{i}",
            Lines =
            [
                .. part.Lines.Count > 0 ? part.Lines : [Plain],
                .. i == 0 ? Array.Empty<Line>() : [AllOf($"part-{i - 1}")],
            ],
        }).Select((part, i) => part with
        {
            Base = i % 2 == 0 ? null : part.Lines[^1].Id,
        }).ToArray();
        return new()
        {
            Title = title,
            Make = makes ? new(12, "rolls of rye", Engine.Quantities.Mass.FromGrams(82.5)) : null,
            Home = home,
            Components = components,
            Steps =
            [
                .. steps.Select((step, i) => step with
                {
                    Vessel = home.Vessels.Count > 0 && step.Variants.Count == 0 ? home.Vessels[i % home.Vessels.Count] with { Warmed = i % 3 == 1 } : step.Vessel,
                    Id = $"step-{i}",
                    Component = components[i % components.Length].Id,
                    Order = i % 2 == 0 ? [] : [.. components[i % components.Length].Lines.Select(line => line.Id).Reverse()],
                }).Select((step, i) => step with
                {
                    Photos = PhotosFor(step.Id + new string('a', i % 3)),
                    Variants =
                    [
                        .. step.Variants.Select(variant => variant with
                        {
                            Step = variant.Step with { Id = step.Id, Component = step.Component, Order = step.Order, Photos = PhotosFor(step.Id + new string('a', i % 3)) },
                        }),
                    ],
                }),
            ],
            Tools = words is null ? null : ["scale", title],
            Words = words,
            Photos = PhotosFor(title),
        };
    }

    /// <summary>None, one or two, by what it is laid to.</summary>
    private static Photo[] PhotosFor(string what) =>
    [
        .. new Photo[] { new("1f9c03ab77e2d4c1", "the crumb, cut: \"open\"", Position.None), new("00112233445566778899aabbccddeeff", what.Trim() is { Length: > 0 } words ? "of " + Slug.Of(words) : "no name", Position.None) }
            .Take(what.Length % 3),
    ];

    private static Line AllOf(string part) => new() { Id = part, Name = part, Uses = part, Typed = "all of it", Position = Position.None };

    private static Line Plain => new()
    {
        Id = "flour",
        Name = "flour",
        Mass = Engine.Quantities.Mass.FromGrams(100),
        Typed = "100 g",
        Position = Position.None,
    };

    /// <summary>Any double a measurement could give: nothing between zero and a millionth.</summary>
    private static Gen<double> Double(double low, double high) => Gen.Double[low, high].Select(value => Math.Abs(value) < 1e-6 ? 0 : value);

    private static Gen<T?> Maybe<T>(Gen<T> gen) where T : struct =>
        Gen.Select(Gen.Bool, gen).Select((there, value) => there ? value : (T?)null);

    private static Gen<string?> MaybeText(Gen<string> gen) => Gen.Select(Gen.Bool, gen).Select((there, value) => there ? value : null);
}
