namespace Doughwright.App.Text.Sides;

/// <summary>One consequence, in finished words.</summary>
/// <param name="Of">Where the first figure stands in the JSON of "compare": "run.minutes.bulk".</param>
/// <param name="IsSame">Whether both are shown the same.</param>
internal sealed record ComesRow(string What, SideCell First, SideCell Second, string By, bool IsSame, string Of, double? FirstValue, double? SecondValue)
{
    /// <summary>What moved it; empty where it is the same, or that was not worked out.</summary>
    public WhyMoved Because { get; init; } = WhyMoved.Nothing;
}
