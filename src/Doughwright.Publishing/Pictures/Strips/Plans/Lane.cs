namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>A strand with its height above the bench.</summary>
/// <param name="Height">Of its middle.</param>
/// <param name="Thickness">At its heaviest.</param>
internal sealed record Lane(PlannedStrand Strand, double Height, double Thickness)
{
    public double Top => Height + (Thickness / 2);

    public double Bottom => Height - (Thickness / 2);
}
