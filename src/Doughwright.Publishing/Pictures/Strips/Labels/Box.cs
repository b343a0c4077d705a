namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>A rectangle of the picture that something fills.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
}
