using Doughwright.Engine.Quantities;

namespace Doughwright.App.Commands;

/// <summary>What measures are called on the command line and in an address.</summary>
internal static class MeasureNames
{
    public static IReadOnlyDictionary<string, MeasureSystem> All { get; } = new Dictionary<string, MeasureSystem>
    {
        ["metric"] = MeasureSystem.Metric,
        ["us"] = MeasureSystem.Us,
    };

    /// <summary>Those that an address asks for; the usual ones where it asks for none, or for what there is not.</summary>
    public static MeasureSystem Of(string? asked) => All.GetValueOrDefault(asked ?? "", MeasureSystem.Metric);

    /// <summary>What stands in an address for them; null for the usual measures, which no address names.</summary>
    public static string? InAddress(MeasureSystem measures) =>
        measures == MeasureSystem.Metric ? null : All.First(name => name.Value == measures).Key;
}
