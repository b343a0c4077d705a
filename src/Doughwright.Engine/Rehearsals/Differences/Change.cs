using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Differences;

/// <summary>One change of a request, and what it is called.</summary>
internal sealed record Change(Move Move, Request After)
{
    /// <summary>
    /// The changes that take the first request to the second, each with all before it done; only what differs. The kitchen of both is written out.
    /// </summary>
    /// <remarks>
    /// The order decides who gets the share that two changes have together, so it is fixed: it is that of <see cref="Mover"/>. How warm things go
    /// in stands first where the second asks for a dough temperature and last where only the first does, so that the other changes are told of a
    /// dough that keeps its temperature, as the person who asked for it will see.
    /// </remarks>
    public static IReadOnlyList<Change> Between(Request first, Request second)
    {
        var changes = new List<Change>();
        var at = first;
        var (from, to) = (first.Kitchen!, second.Kitchen!);
        void Add(Mover mover, Direction direction, Request after)
        {
            if (!Equals(at, after))
            {
                changes.Add(new(new(mover, direction), after));
                at = after;
            }
        }

        void Move(Mover mover, Direction direction, Kitchen kitchen) => Add(mover, direction, at with { Kitchen = kitchen });
        void Warm()
        {
            if (!Alike(at.At, second.At) || at.Dough != second.Dough || !at.Free.SequenceEqual(second.Free))
            {
                Add(Mover.Warmth, Of(at.Dough, second.Dough), at with { At = second.At, Dough = second.Dough, Free = second.Free });
            }
        }

        var keeps = second.Dough is not null || first.Dough is null;
        if (keeps)
        {
            Warm();
        }

        Add(Mover.Pour, Of(first.Pour, second.Pour), at with { Pour = second.Pour });
        Add(Mover.Bowls, Direction.Other, Alike(at.Bowls, second.Bowls) ? at : at with { Bowls = second.Bowls });
        Add(Mover.Variant, Direction.Other, Alike(at.Variants, second.Variants) ? at : at with { Variants = second.Variants });
        Add(Mover.Mixing, Direction.Other, Alike(at.Ways, second.Ways) ? at : at with { Ways = second.Ways });
        Add(Mover.Weighed, Direction.Other, Alike(at.Weighed, second.Weighed) ? at : at with { Weighed = second.Weighed });
        Move(Mover.Room, Of(Steady(from), Steady(to)), at.Kitchen! with
        {
            Air = to.Air,
            Ingredients = ShelfIsRoom(from) && ShelfIsRoom(to) ? to.Ingredients : from.Ingredients,
            ProofingPlace = PlaceIsRoom(from) && PlaceIsRoom(to) ? to.ProofingPlace : from.ProofingPlace,
        });
        Move(Mover.Shelf, Of(at.Kitchen!.Shelf, to.Shelf), at.Kitchen with { Ingredients = to.Ingredients });
        Move(Mover.ProofingPlace, Of(Place(at.Kitchen!), Place(to)), at.Kitchen! with { ProofingPlace = to.ProofingPlace });
        Move(Mover.Height, Of(from.Altitude.Metres, to.Altitude.Metres), at.Kitchen! with { Altitude = to.Altitude });
        Move(Mover.Tap, Of(from.Tap, to.Tap), at.Kitchen! with { Tap = to.Tap });
        Move(Mover.Fridge, Of(from.Fridge, to.Fridge), at.Kitchen! with { Fridge = to.Fridge });
        Move(Mover.Oven, to.Oven == OvenMode.Fan ? Direction.More : Direction.Less, at.Kitchen! with { Oven = to.Oven, OvenTraits = to.OvenTraits });
        Move(Mover.Equipment, Direction.Other, at.Kitchen! with { Trays = to.Trays, Scale = to.Scale, Vessels = to.Vessels });
        if (!keeps)
        {
            Warm();
        }

        return changes;
    }

    private static bool ShelfIsRoom(Kitchen kitchen) => kitchen.Shelf == kitchen.Air.At(Duration.Zero);

    private static bool PlaceIsRoom(Kitchen kitchen) => kitchen.ProofingPlace is not { } place || place == Steady(kitchen);

    /// <summary>The room where it stays as it is; null where it changes.</summary>
    private static Temperature? Steady(Kitchen kitchen) => kitchen.Air.IsConstant ? kitchen.Air.At(Duration.Zero) : null;

    private static Temperature? Place(Kitchen kitchen) => kitchen.ProofingPlace ?? Steady(kitchen);

    private static Direction Of(Temperature? from, Temperature? to) => Of(from?.Celsius, to?.Celsius);

    private static Direction Of(double? from, double? to) => from < to ? Direction.More : from > to ? Direction.Less : Direction.Other;

    private static bool Alike<T>(IReadOnlyDictionary<string, T> one, IReadOnlyDictionary<string, T> other) =>
        one.Count == other.Count && one.All(pair => other.TryGetValue(pair.Key, out var value) && Equals(pair.Value, value));
}
