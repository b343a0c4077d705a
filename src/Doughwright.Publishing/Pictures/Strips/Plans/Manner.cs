namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>How a strand goes into what it joins.</summary>
internal enum Manner
{
    /// <summary>Nobody takes it in.</summary>
    Alone,

    /// <summary>Winds into the dough, or into another strand, while that is mixed.</summary>
    Winds,

    /// <summary>Is laid in from above and the core grows by its weight: a filling.</summary>
    LaidIn,

    /// <summary>Hangs above the piece from when it is stirred, and falls when it is poured: a glaze.</summary>
    Poured,

    /// <summary>A thread, whatever it weighs: a wash.</summary>
    Thread,
}
