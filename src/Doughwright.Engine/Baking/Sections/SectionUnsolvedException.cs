namespace Doughwright.Engine.Baking.Sections;

/// <summary>The balances of a bake could not be solved.</summary>
/// <param name="seconds">How far it came.</param>
internal sealed class SectionUnsolvedException(double seconds)
    : InvalidOperationException(FormattableString.Invariant($"The heat and water of a piece could not be balanced {seconds:0.###} s into its bake."))
{
    public double Seconds => seconds;
}
