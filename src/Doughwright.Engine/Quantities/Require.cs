using System.Runtime.CompilerServices;

namespace Doughwright.Engine.Quantities;

/// <summary>Guards of constructors. They throw, because a broken guard is a fault of ours: text from people is checked before it gets here.</summary>
internal static class Require
{
    public static double Finite(double value, string what) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(what, value, $"{what} must be a finite number.");

    public static double Within(double value, double low, double high, string what) =>
        value >= low && value <= high
            ? value
            : throw new ArgumentOutOfRangeException(what, value, FormattableString.Invariant($"{what} must lie in {low} to {high}."));

    public static T NotNull<T>(T? value, [CallerArgumentExpression(nameof(value))] string what = "") where T : class =>
        value ?? throw new InvalidOperationException($"{what} must be known here.");
}
