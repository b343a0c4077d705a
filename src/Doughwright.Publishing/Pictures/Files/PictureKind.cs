namespace Doughwright.Publishing.Pictures.Files;

/// <summary>A picture that can stand in a file of its own.</summary>
internal enum PictureKind
{
    /// <summary>The strip, time to the right.</summary>
    Strip,

    /// <summary>The strip, time downwards.</summary>
    Tall,

    /// <summary>How a dough rises in one step.</summary>
    Rise,

    /// <summary>Where the warmth of one mix comes from.</summary>
    Heat,

    /// <summary>What the dough consists of.</summary>
    Balance,

    /// <summary>How a piece bakes, over a section through it.</summary>
    Bake,

    /// <summary>How a place made warm for a dough goes.</summary>
    Place,
}
