namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>How a stretch of time is filled.</summary>
/// <param name="Fill">A gradient of warmth, or none where the warmth cannot be told.</param>
internal readonly record struct Paint(double From, double To, string Fill)
{
    public const string None = "none";
}
