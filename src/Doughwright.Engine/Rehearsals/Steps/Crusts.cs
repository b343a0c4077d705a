namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Whether a crust is as brown as at home when the core is done.</summary>
internal static class Crusts
{
    /// <summary>Colours that come so close in time, by a factor, look alike: a bake is read by its colour to about 6 %, twice over. Source: bake-reading.</summary>
    public const double LooksAlike = 1.15;

    /// <param name="core">Minutes until the core is done.</param>
    /// <param name="colour">Minutes until the crust is as brown as at home; infinite when it took too long to be followed.</param>
    public static CrustRank Rank(double core, double colour) =>
        colour > core * LooksAlike ? CrustRank.Paler : colour * LooksAlike < core ? CrustRank.Browner : CrustRank.Alike;
}
