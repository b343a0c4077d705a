using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The parts of a recipe and their lines.</summary>
internal sealed class PartsSection
{
    public const string Kind = "kind";
    public const string Name = "name";
    public const string Base = "base";

    private readonly FindingLog log;
    private readonly string place;
    private readonly Dictionary<string, Position> ids = [];
    private readonly Dictionary<string, HashSet<string>> lineIds = [];

    private readonly Larder larder;

    private PartsSection(string place, FindingLog log, Larder larder) => (this.place, this.log, this.larder) = (place, log, larder);

    public IReadOnlyList<Component> Components { get; private set; } = [];

    /// <summary>Whether the text has a part of this id, readable or not.</summary>
    public bool Has(string id) => ids.ContainsKey(id);

    public IEnumerable<string> Ids => ids.Keys;

    /// <summary>Ids of the lines the text has in a part, readable or not.</summary>
    public IReadOnlySet<string> LinesOf(string id) => lineIds.GetValueOrDefault(id) ?? [];

    public static PartsSection Read(TextMapping? mapping, string place, FindingLog log, Larder larder)
    {
        var section = new PartsSection(place, log, larder);
        if (mapping is not null)
        {
            section.Read(mapping);
        }

        return section;
    }

    private void Read(TextMapping mapping)
    {
        var parts = new List<TextEntry>();
        foreach (var entry in mapping.Entries)
        {
            if (IdCheck.Take(entry, ids, place, log))
            {
                parts.Add(entry);
            }
        }

        var read = new List<Component>();
        foreach (var entry in mapping.Entries)
        {
            var component = ReadPart(entry, Slug.Of(entry.Key));
            if (component is not null && parts.Contains(entry))
            {
                read.Add(component);
            }
        }

        Components = Circles.Cut(read, place, log);
    }

    private Component? ReadPart(TextEntry entry, string id)
    {
        var under = $"{place}.{id}";
        if (Section.KeysOf(entry, under, log) is not { } mapping)
        {
            return null;
        }

        var settings = new Section(Only(mapping, isSetting: true), under, log, [Kind, Name, Base]);
        var kind = KindWord.Read<ComponentKind>(settings, id, entry);
        var lines = new List<Line>();
        var taken = new Dictionary<string, Position>();
        foreach (var line in Only(mapping, isSetting: false).Entries)
        {
            var isFirst = IdCheck.Take(line, taken, under, log);
            if (Section.WordsOf(line, $"{under}.{Slug.Of(line.Key)}", log) is { } value && ReadLine(line, value, id) is { } read && isFirst)
            {
                lines.Add(read);
            }
        }

        lineIds.TryAdd(id, [.. taken.Keys]);
        if (taken.Count == 0)
        {
            log.Wrong(FormFaults.PartWithoutLines, under, entry.KeyPosition, ("part", entry.Key));
        }

        var name = settings.Words(Name)?.Text ?? Slug.InWords(id);
        var basis = ReadBase(settings, taken.Keys);
        return kind is { } known ? Settled(new(id, name, known, lines, entry.KeyPosition) { Base = basis }, isWhole: lines.Count == taken.Count) : null;
    }

    /// <summary>Percentages become masses. A percentage of nothing is left out, and told, unless a line that was not understood may be what it is of.</summary>
    private Component Settled(Component part, bool isWhole)
    {
        var settled = TypedShares.Settled(part, larder);
        var open = settled.Lines.Where(line => line is { Share: not null, Mass: null }).ToArray();
        foreach (var line in isWhole ? open : [])
        {
            log.Fault(FormFaults.PercentWithoutBase, $"{place}.{part.Id}.{line.Id}", line.Position, ("typed", line.Typed), ("line", line.Name), ("part", part.Name));
        }

        return open.Length == 0 ? settled : settled with { Lines = [.. settled.Lines.Except(open)] };
    }

    /// <summary>The line that the part's percentages are on.</summary>
    private string? ReadBase(Section settings, IReadOnlyCollection<string> lines)
    {
        if (settings.Words(Base) is not { } words)
        {
            return null;
        }

        var id = Slug.Of(words.Text);
        if (lines.Contains(id))
        {
            return id;
        }

        log.Wrong(FormFaults.BaseUnknownLine, words.Place, words.Position, Phrase.UnknownWord(words.Text, [.. lines]));
        return null;
    }

    /// <summary>A line named like its own part is an ingredient: the potato in the part "potato".</summary>
    private Line? ReadLine(TextEntry entry, Phrase value, string part)
    {
        var id = Slug.Of(entry.Key);
        var isPart = id != part && ids.ContainsKey(id);
        if (isPart && MeasureGrammar.Read(value.Split()[0].Text) is not null)
        {
            log.Fault(FormFaults.MeasureOfPart, value.Place, value.Position, ("typed", value.Split()[0].Text), ("part", entry.Key));
            return null;
        }

        if (LineGrammar.Read(entry.Key, entry.KeyPosition, value, larder) is not { } line)
        {
            return null;
        }

        if (isPart)
        {
            return line with { Uses = line.Id };
        }

        if (line.Mass is not null || line.Household is not null || line.Share is not null)
        {
            return line;
        }

        log.Wrong(FormFaults.MissingComponent, value.Place, entry.KeyPosition, ("part", entry.Key), ("known", string.Join(", ", ids.Keys)));
        return null;
    }

    private static TextMapping Only(TextMapping mapping, bool isSetting) =>
        mapping with { Entries = [.. mapping.Entries.Where(entry => (entry.Key is Kind or Name or Base) == isSetting)] };
}
