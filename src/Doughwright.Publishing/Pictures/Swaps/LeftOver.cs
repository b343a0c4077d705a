using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Swaps;

/// <summary>What is balanced in a swap.</summary>
internal enum LeftMatter
{
    Water,
    Sugar,
    Fat,
    Salt,
}

/// <summary>What a swap leaves over, matter by matter.</summary>
internal static class LeftOver
{
    // One decimal is shown: less is none.
    private const double Shown = 0.05;

    public static IReadOnlyList<(LeftMatter Matter, Percent? Percent)> Of(SwapResidual residual) =>
        [(LeftMatter.Water, residual.Water), (LeftMatter.Sugar, residual.Sugar), (LeftMatter.Fat, residual.Fat), (LeftMatter.Salt, residual.Salt)];

    public static bool IsNone(Percent percent) => Math.Abs(percent.Value) < Shown;
}
