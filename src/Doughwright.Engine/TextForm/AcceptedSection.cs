using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// Findings the author accepts: under "accepted" the id of each, and under that the reason and the fingerprint of the place as it stood then.
/// </summary>
internal static class AcceptedSection
{
    public const string Reason = "reason";
    public const string Mark = "mark";

    public static IReadOnlyList<Accepted> Read(TextMapping? mapping, string place, FindingLog log)
    {
        var accepted = new List<Accepted>();
        foreach (var entry in mapping?.Entries ?? [])
        {
            var under = $"{place}.{Slug.Of(entry.Key)}";
            if (Section.KeysOf(entry, under, log) is not { } keys)
            {
                continue;
            }

            var section = new Section(keys, under, log, [Reason, Mark]);
            if (section.Words(Reason)?.Text is { Length: > 0 } reason)
            {
                accepted.Add(new(entry.Key, reason, section.Words(Mark)?.Text ?? "", entry.KeyPosition));
            }
            else if (!section.Has(Reason))
            {
                log.Wrong(AcceptedFaults.WithoutReason, under, entry.KeyPosition, ("finding", entry.Key));
            }
        }

        return [.. accepted.DistinctBy(one => one.FindingId)];
    }

    public static TextMapping Write(IReadOnlyList<Accepted> accepted)
    {
        var section = new TreeBuilder();
        foreach (var one in accepted)
        {
            section.Keys(one.FindingId, new TreeBuilder().Words(Reason, one.Reason).Words(Mark, one.PlaceMark.Length == 0 ? null : one.PlaceMark).Mapping);
        }

        return section.Mapping;
    }
}
