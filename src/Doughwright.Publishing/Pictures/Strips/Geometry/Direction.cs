namespace Doughwright.Publishing.Pictures.Strips.Geometry;

/// <summary>Which way time runs.</summary>
internal enum Direction
{
    /// <summary>To the right, heights upwards.</summary>
    Wide,

    /// <summary>Downwards, heights to the left.</summary>
    Tall,
}
