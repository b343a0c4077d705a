using CsCheck;

namespace Doughwright.Engine.Tests.TextForm;

internal static class Pick
{
    public static Gen<T> From<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
