using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Ids are the slugs of keys, and stand once in their section.</summary>
internal static class IdCheck
{
    /// <summary>Takes the id of an entry; false, and told, when it stands there already or when nothing is left of the key.</summary>
    public static bool Take(TextEntry entry, Dictionary<string, Position> taken, string place, FindingLog log)
    {
        var id = Slug.Of(entry.Key);
        if (id.Length == 0)
        {
            log.Fault(FormFaults.IdMissing, place, entry.KeyPosition, ("key", entry.Key));
            return false;
        }

        if (taken.TryAdd(id, entry.KeyPosition))
        {
            return true;
        }

        log.Fault(FormFaults.SameIdTwice, $"{place}.{id}", entry.KeyPosition, ("id", id), ("key", entry.Key), ("first", taken[id].Line));
        return false;
    }
}
