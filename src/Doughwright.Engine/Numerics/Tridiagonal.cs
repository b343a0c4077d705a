using System.Runtime.CompilerServices;

namespace Doughwright.Engine.Numerics;

/// <summary>
/// Solves lower[i] x[i-1] + diagonal[i] x[i] + upper[i] x[i+1] = right[i] for every lane. Without pivoting: the diagonal must outweigh
/// its row, as it does in implicit conduction.
/// </summary>
/// <remarks>
/// Eliminates from both ends towards the middle. Each step of an elimination waits for the division before it; two that do not wait for
/// each other take little longer than one.
/// </remarks>
internal static class Tridiagonal
{
    /// <param name="right">The right-hand side; the solution afterwards.</param>
    /// <param name="scratch">As long as the others. What it holds does not matter.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Solve<T>(ReadOnlySpan<T> lower, ReadOnlySpan<T> diagonal, ReadOnlySpan<T> upper, Span<T> right, Span<T> scratch)
        where T : struct, ILane<T>
    {
        var count = right.Length;
        var one = T.Of(1);
        if (count == 1)
        {
            right[0] /= diagonal[0];
            return;
        }

        // Rows 0 .. half - 1 are eliminated downwards, the others upwards; an odd row goes to the lower end.
        var half = count / 2;
        var (top, bottom) = (0, count - 1);
        var pivotTop = one / diagonal[top];
        var pivotBottom = one / diagonal[bottom];
        scratch[top] = upper[top] * pivotTop;
        right[top] *= pivotTop;
        scratch[bottom] = lower[bottom] * pivotBottom;
        right[bottom] *= pivotBottom;
        for (var i = 1; i < half; i++)
        {
            (top, bottom) = (i, count - 1 - i);
            pivotTop = one / (diagonal[top] - lower[top] * scratch[top - 1]);
            pivotBottom = one / (diagonal[bottom] - upper[bottom] * scratch[bottom + 1]);
            scratch[top] = upper[top] * pivotTop;
            right[top] = (right[top] - lower[top] * right[top - 1]) * pivotTop;
            scratch[bottom] = lower[bottom] * pivotBottom;
            right[bottom] = (right[bottom] - upper[bottom] * right[bottom + 1]) * pivotBottom;
        }
        if (bottom > half)
        {
            bottom = half;
            pivotBottom = one / (diagonal[bottom] - upper[bottom] * scratch[bottom + 1]);
            scratch[bottom] = lower[bottom] * pivotBottom;
            right[bottom] = (right[bottom] - upper[bottom] * right[bottom + 1]) * pivotBottom;
        }

        // The two rows that meet hold two unknowns. From there outwards each unknown needs only its inner neighbour.
        right[bottom] = (right[bottom] - scratch[bottom] * right[top]) / (one - scratch[bottom] * scratch[top]);
        right[top] -= scratch[top] * right[bottom];
        while (top > 0)
        {
            top--;
            bottom++;
            right[top] -= scratch[top] * right[top + 1];
            right[bottom] -= scratch[bottom] * right[bottom - 1];
        }
        if (bottom < count - 1)
            right[bottom + 1] -= scratch[bottom + 1] * right[bottom];
    }
}
