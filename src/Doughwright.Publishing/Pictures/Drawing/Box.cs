namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>A rectangle in a picture, y downwards.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>From any two corners.</summary>
    public static Box Of(double x1, double y1, double x2, double y2) => new(Math.Min(x1, x2), Math.Min(y1, y2), Math.Max(x1, x2), Math.Max(y1, y2));

    public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Contains(double x, double y) => x > Left && x < Right && y > Top && y < Bottom;

    public Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}
