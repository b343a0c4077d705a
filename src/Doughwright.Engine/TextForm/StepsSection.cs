using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The steps of a recipe, in the order of the text.</summary>
internal static class StepsSection
{
    public const string Name = "name";
    public const string Of = "of";
    public const string Hands = "hands";
    public const string Way = "way";
    public const string Where = "where";
    public const string Oven = "oven";
    public const string Trays = "trays";
    public const string Vessel = "vessel";
    public const string Depth = "depth";
    public const string Cover = "cover";
    public const string Order = "order";
    public const string Fold = "fold";
    public const string Folds = "folds";
    public const string Ends = "ends";
    public const string Measured = "measured";
    public const string Cue = "cue";
    public const string Tools = "tools";
    public const string Words = "words";

    private static readonly string[] Keys =
    [
        Name, KindWord.Key, Of, Hands, Way, Where, Oven, Trays, Vessel, Depth, Cover, Order, Fold, Folds, Ends, Measured, Cue, Tools, Words,
    ];

    public static IReadOnlyList<Step> Read(TextMapping? mapping, PartsSection parts, string place, FindingLog log)
    {
        var steps = new List<Step>();
        var orders = new OrderReader(parts);
        var taken = new Dictionary<string, Position>();
        foreach (var entry in mapping?.Entries ?? [])
        {
            var isFirst = IdCheck.Take(entry, taken, place, log);
            var id = Slug.Of(entry.Key);
            if (Section.KeysOf(entry, $"{place}.{id}", log) is { } keys
                && ReadStep(new(keys, $"{place}.{id}", log, Keys), id, entry, parts, orders) is { } step && isFirst)
            {
                steps.Add(step);
            }
        }

        orders.TellLeftOut();
        return steps;
    }

    private static Step? ReadStep(Section section, string id, TextEntry entry, PartsSection parts, OrderReader orders)
    {
        var kind = KindWord.Read<StepKind>(section, id, entry);
        var part = ReadPart(section, entry, parts);
        var step = new Step
        {
            Id = id,
            Name = section.Words(Name)?.Text ?? Slug.InWords(id),
            Kind = kind ?? default,
            Component = part ?? "",
            Hands = section.Words(Hands)?.Duration(Limits.Hands) ?? Duration.Zero,
            Way = section.Words(Way) is { } way ? StepGrammar.Way(way) : null,
            Where = section.Words(Where)?.Word<Where>() ?? default,
            Oven = section.Words(Oven) is { } oven ? StepGrammar.Oven(oven) : null,
            Trays = section.Words(Trays)?.Count(Limits.Trays),
            Vessel = section.Words(Vessel) is { } vessel ? StepGrammar.Vessel(vessel) : null,
            Depth = section.Words(Depth)?.Length(Limits.Depth),
            Cover = section.Words(Cover)?.Word<Cover>() ?? default,
            Order = part is not null && section.Items(Order) is { } order ? orders.Read(order, part) : [],
            Folds = [.. Items(section, Fold).Concat(Items(section, Folds)).Select(StepGrammar.Fold).OfType<Fold>()],
            End = section.Words(Ends) is { } end ? EndGrammar.Read(end) : null,
            Measured = section.Words(Measured) is { } measured ? MeasuredGrammar.Read(measured, MeasuredLimit(kind)) : null,
            Cue = section.Prose(Cue),
            Tools = [.. (section.Items(Tools) ?? []).Select(tool => tool.Text)],
            Words = section.Prose(Words),
            Position = entry.KeyPosition,
        };
        return kind is null || part is null ? null : step;
    }

    /// <summary>A mix is measured in the dough, a bake in its core.</summary>
    private static Limit<Temperature> MeasuredLimit(StepKind? kind) => kind switch
    {
        StepKind.Mix => Limits.Mixed,
        StepKind.Bake => Limits.Core,
        _ => Limits.Matter,
    };

    private static string? ReadPart(Section section, TextEntry entry, PartsSection parts)
    {
        if (!section.Has(Of))
        {
            var known = string.Join(", ", parts.Ids);
            section.Log.Fault(FormFaults.StepWithoutPart, section.Place, entry.KeyPosition, ("step", entry.Key), ("known", known));
            return null;
        }

        if (section.Words(Of) is not { } words)
        {
            return null;
        }

        var part = Slug.Of(words.Text);
        if (parts.Has(part))
        {
            return part;
        }

        words.Log.Wrong(
            FormFaults.StepOfUnknownPart,
            words.Place,
            words.Position,
            [("part", words.Text), .. Phrase.UnknownWord(words.Text, [.. parts.Ids])]);
        return null;
    }

    /// <summary>One line of words, or a list of such.</summary>
    private static IEnumerable<Phrase> Items(Section section, string key) =>
        section.Entry(key)?.Value is TextList ? section.Items(key) ?? [] : section.Words(key) is { } words ? [words] : [];
}
