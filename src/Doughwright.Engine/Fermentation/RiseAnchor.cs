namespace Doughwright.Engine.Fermentation;

/// <summary>What the author's own bulk says about the author's yeast and dough.</summary>
/// <param name="Scale">
/// Rate against the book, per lane. 0 in a lane where no rate at all gives the measured growth: such a lane never rises anywhere.
/// </param>
/// <param name="IsFound">Whether the lane agrees with what was measured.</param>
/// <param name="Folds">The folds as they were done at home, with the growth each met in each lane.</param>
internal sealed record RiseAnchor(double[] Scale, bool[] IsFound, RiseFolds Folds);
