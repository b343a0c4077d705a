namespace Doughwright.Publishing.Pictures.Strips.Geometry;

/// <summary>
/// The one mapping of a strip: time along the bench and height above it become a place in the picture. Everything else is written in minutes
/// and heights, so that wide and tall are drawn by the same code.
/// </summary>
/// <param name="Bench">Where the bench lies across the direction of time.</param>
/// <param name="PerGram">Height of a gram without gas.</param>
/// <param name="Length">Size of the picture along time.</param>
/// <param name="Breadth">Size of the picture across it.</param>
internal sealed record Frame(Direction Direction, TimeScale Time, double Bench, double PerGram, double Length, double Breadth)
{
    public bool IsWide => Direction == Direction.Wide;

    public double Width => IsWide ? Length : Breadth;

    public double Height => IsWide ? Breadth : Length;

    public (double X, double Y) At(double minute, double height) => AtPlace(Time.Place(minute), height);

    /// <summary>The same for a place along the picture.</summary>
    public (double X, double Y) AtPlace(double place, double height) => IsWide ? (place, Bench - height) : (Bench - height, place);
}
