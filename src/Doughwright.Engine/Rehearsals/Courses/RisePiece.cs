namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>A stretch of a rise that runs straight, in minutes and growth.</summary>
internal readonly record struct RisePiece(double From, double GrowthFrom, double To, double GrowthTo)
{
    public double At(double minutes) => To > From ? GrowthFrom + ((minutes - From) / (To - From) * (GrowthTo - GrowthFrom)) : GrowthTo;

    /// <summary>When it passes a growth that lies on it; its beginning for one that lies lower.</summary>
    public double When(double growth) => growth <= GrowthFrom ? From : From + ((growth - GrowthFrom) / (GrowthTo - GrowthFrom) * (To - From));
}
