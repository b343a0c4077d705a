namespace Doughwright.Engine.Rehearsals;

/// <summary>One piece of work to lay on the time line.</summary>
/// <param name="Minutes">Length; finite.</param>
/// <param name="Before">Indices of what must have ended before it starts.</param>
/// <param name="Hands">When within it a person is busy: offset and length, in minutes.</param>
/// <param name="UsesOven">Whether it holds the one oven.</param>
internal sealed record Work(double Minutes, int[] Before, (double Offset, double Minutes)[] Hands, bool UsesOven);
