namespace Doughwright.Publishing.Pictures.Strips.Geometry;

/// <summary>A long wait that is drawn short. Minutes after the first hand.</summary>
internal readonly record struct FoldedWait(double From, double To)
{
    /// <summary>Length in which every folded wait is drawn, in the units of the picture.</summary>
    public const double Drawn = 90;

    public double Minutes => To - From;
}
