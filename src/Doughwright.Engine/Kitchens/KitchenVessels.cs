using System.Collections;
using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Kitchens;

/// <summary>The vessels that a kitchen says it has, each by a name of its own. Equal when all of them are. Immutable.</summary>
public sealed class KitchenVessels : IReadOnlyList<Vessel>, IEquatable<KitchenVessels>
{
    private readonly Vessel[] all;

    private KitchenVessels(Vessel[] all) => this.all = all;

    /// <summary>Nothing is said of vessels.</summary>
    public static KitchenVessels Unsaid { get; } = new([]);

    /// <summary>0 where nothing is said.</summary>
    public int Count => all.Length;

    /// <summary>In the order in which they were written.</summary>
    public Vessel this[int index] => all[index];

    /// <summary>Vessels with their names.</summary>
    /// <exception cref="ArgumentException">One has no name.</exception>
    public static KitchenVessels Of(IEnumerable<Vessel> vessels)
    {
        Vessel[] all = [.. vessels];
        return all.Any(vessel => vessel.Name is null) ? throw new ArgumentException("A vessel of a kitchen has a name.", nameof(vessels)) : all.Length == 0 ? Unsaid : new(all);
    }

    /// <summary>The vessel of this name, however its letters are written; null when there is none.</summary>
    public Vessel? Named(string name) => Slug.Of(name) is { Length: > 0 } id ? all.FirstOrDefault(vessel => Slug.Of(vessel.Name!) == id) : null;

    public bool Equals(KitchenVessels? other) => other is not null && all.AsSpan().SequenceEqual(other.all);

    public override bool Equals(object? obj) => Equals(obj as KitchenVessels);

    public override int GetHashCode() => HashCode.Combine(all.Length, all.FirstOrDefault());

    /// <summary>In the order in which they were written.</summary>
    public IEnumerator<Vessel> GetEnumerator() => ((IEnumerable<Vessel>)all).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => all.GetEnumerator();
}
