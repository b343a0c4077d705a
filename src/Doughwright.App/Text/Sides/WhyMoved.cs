namespace Doughwright.App.Text.Sides;

/// <summary>What moved a figure, in words.</summary>
/// <param name="IsMostlyTogether">Whether what is left over is more than any one change moves it alone: then causes cannot be told apart.</param>
internal readonly record struct WhyMoved(string Words, bool IsMostlyTogether)
{
    public static WhyMoved Nothing { get; } = new("", false);
}
