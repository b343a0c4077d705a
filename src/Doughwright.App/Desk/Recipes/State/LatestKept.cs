namespace Doughwright.App.Desk.Recipes.State;

/// <summary>What was worked out last, by all that it depends on. The oldest goes when there is no more room. Safe from many pages at once.</summary>
internal sealed class LatestKept<T>(int most) where T : class
{
    private readonly Lock turn = new();
    private readonly List<(string Key, T Value)> kept = [];

    /// <summary>Null when it is not kept.</summary>
    public T? Find(string key)
    {
        lock (turn)
        {
            return kept.Find(one => one.Key == key).Value;
        }
    }

    public T Keep(string key, T value)
    {
        lock (turn)
        {
            kept.RemoveAll(one => one.Key == key);
            if (kept.Count == most)
            {
                kept.RemoveAt(0);
            }

            kept.Add((key, value));
            return value;
        }
    }
}
