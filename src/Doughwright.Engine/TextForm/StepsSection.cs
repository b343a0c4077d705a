using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Notes;

namespace Doughwright.Engine.TextForm;

/// <summary>The steps of a recipe, in the order of the text.</summary>
internal static class StepsSection
{
    public const string Of = "of";
    public const string Order = "order";
    public const string Learn = "learn";

    private static readonly string[] Keys = [StepKeys.Name, KindWord.Key, Of, .. StepKeys.All.Skip(1), Order, PhotoGrammar.Key, Learn, VariantsSection.Key];

    public static IReadOnlyList<Step> Read(TextMapping? mapping, PartsSection parts, KitchenVessels vessels, string place, FindingLog log)
    {
        var steps = new List<Step>();
        var orders = new OrderReader(parts);
        var taken = new Dictionary<string, Position>();
        foreach (var entry in mapping?.Entries ?? [])
        {
            var isFirst = IdCheck.Take(entry, taken, place, log);
            var id = Slug.Of(entry.Key);
            if (Section.KeysOf(entry, $"{place}.{id}", log) is { } keys
                && ReadStep(new(keys, $"{place}.{id}", log, Keys), id, entry, parts, orders, vessels) is { } step && isFirst)
            {
                steps.Add(step);
            }
        }

        orders.TellLeftOut();
        return steps;
    }

    private static Step? ReadStep(Section section, string id, TextEntry entry, PartsSection parts, OrderReader orders, KitchenVessels vessels)
    {
        var kind = KindWord.Read<StepKind>(section, id, entry);
        var part = ReadPart(section, entry, parts);
        var blank = new Step { Id = id, Name = Slug.InWords(id), Kind = kind ?? default, Component = part ?? "", Position = entry.KeyPosition };
        var step = StepKeys.Over(blank, section, kind, vessels) with
        {
            Order = part is not null && section.Items(Order) is { } order ? orders.Read(order, part) : [],
            Photos = PhotoGrammar.Read(section),
            Learn = ReadLinks(section),
        };
        step = step with { Variants = VariantsSection.Read(section, step, kind, orders, vessels) };
        return kind is null || part is null ? null : step;
    }

    /// <summary>Whether there are such notes only a book can say, so any name will do.</summary>
    private static IReadOnlyList<string> ReadLinks(Section section)
    {
        var names = (section.Items(Learn) ?? []).Where(name => name.Text.Length > 0).ToArray();
        if (names.Length > NoteLinks.MostOfStep)
        {
            var more = names[NoteLinks.MostOfStep];
            more.Log.Wrong(FormFaults.LearnMany, more.Place, more.Position, ("count", names.Length), ("most", NoteLinks.MostOfStep));
        }

        return [.. names.Take(NoteLinks.MostOfStep).Select(name => name.Text)];
    }

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
}
