namespace Doughwright.Engine.Shapes;

/// <summary>What a dough is made into.</summary>
internal enum PieceShape
{
    /// <summary>A bun that stands free.</summary>
    Ball,

    /// <summary>A round loaf, or what lies in a bowl or a basket: half a ball.</summary>
    Boule,
    Batard,
    Baguette,

    /// <summary>One piece in a tin: it rises upwards only.</summary>
    TinLoaf,

    /// <summary>Rolled or pressed out to fill a tray, or to a depth: it rises upwards only.</summary>
    Sheet,

    /// <summary>A slice of a rolled-up sheet that lies on its cut.</summary>
    Spiral,
    Ring,

    /// <summary>A round of flat dough.</summary>
    Flat,
}
