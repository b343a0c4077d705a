namespace Doughwright.Engine.Rehearsals.Differences;

/// <summary>
/// What can move a figure from one rehearsal to another. The first rehearsal becomes the second by changing one of these after the other, in the
/// order in which they stand here, but for <see cref="Warmth"/>, which may come last.
/// </summary>
public enum Mover
{
    /// <summary>
    /// How warm things go in: the dough temperature asked for, the lines that are free for it, what goes in at a temperature of its own.
    /// </summary>
    Warmth,

    /// <summary>How warm water is poured that the text calls boiling.</summary>
    Pour,

    /// <summary>Other vessels.</summary>
    Bowls,

    /// <summary>Steps done in another way that the recipe has.</summary>
    Variant,

    /// <summary>Other ways of mixing.</summary>
    Mixing,

    /// <summary>What cooking took from a puree.</summary>
    Weighed,

    /// <summary>The air of the room, with the shelf and the proofing place where they are as warm as the room in both.</summary>
    Room,

    /// <summary>What stands on the shelf, bowls included.</summary>
    Shelf,

    ProofingPlace,

    /// <summary>Height above the sea, and so the pressure of the air.</summary>
    Height,

    Tap,

    Fridge,

    /// <summary>Whether a fan moves the oven's air.</summary>
    Oven,

    /// <summary>Trays and scale.</summary>
    Equipment,
}

/// <summary>Which way a mover goes, for its words.</summary>
public enum Direction
{
    /// <summary>Colder, lower, still air.</summary>
    Less,

    /// <summary>Warmer, higher, a fan.</summary>
    More,

    /// <summary>Neither: another bowl, air that changes through the day.</summary>
    Other,
}
