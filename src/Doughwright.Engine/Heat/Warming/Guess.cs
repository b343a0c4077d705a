namespace Doughwright.Engine.Heat.Warming;

/// <summary>A figure of a household thing that nobody has measured: a likely value that may be off by a factor.</summary>
/// <param name="Likely">Above nought, in the unit its owner names.</param>
/// <param name="SdLn">Standard deviation of its logarithm.</param>
internal readonly record struct Guess(double Likely, double SdLn);
