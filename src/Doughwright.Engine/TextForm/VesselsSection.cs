using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The vessels of a kitchen: a name of their own, and what they are in the words that steps use.</summary>
internal static class VesselsSection
{
    public static KitchenVessels Read(TextMapping? mapping, string place, FindingLog log)
    {
        var vessels = new List<Vessel>();
        var taken = new Dictionary<string, Position>();
        foreach (var entry in mapping?.Entries ?? [])
        {
            var isFirst = IdCheck.Take(entry, taken, place, log);
            var under = $"{place}.{Slug.Of(entry.Key)}";
            if (IsTaken(entry.Key))
            {
                log.Fault(FormFaults.VesselNameTaken, under, entry.KeyPosition, ("name", entry.Key));
            }
            else if (Section.WordsOf(entry, under, log) is { } words && StepGrammar.Vessel(words, KitchenVessels.Unsaid) is { } vessel)
            {
                if (vessel.IsNone || vessel.Warmed)
                {
                    StepGrammar.NoVessel(words);
                }
                else if (isFirst && Slug.Of(entry.Key).Length > 0)
                {
                    vessels.Add(vessel with { Name = entry.Key });
                }
            }
        }

        return KitchenVessels.Of(vessels);
    }

    public static TextMapping Write(KitchenVessels vessels)
    {
        var written = new TreeBuilder();
        foreach (var vessel in vessels)
        {
            written.Words(vessel.Name!, StepWriter.Described(vessel));
        }

        return written.Mapping;
    }

    /// <summary>Whether a step that says these words means any vessel of the kind, or more than a name: "steel bowl", "pot, warmed".</summary>
    private static bool IsTaken(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return name.Contains(',')
            || (words.Length is 1 or 2 && EnumWords<VesselShape>.Find(words[^1]) is not null && (words.Length == 1 || EnumWords<VesselMaterial>.Find(words[0]) is not null));
    }
}
