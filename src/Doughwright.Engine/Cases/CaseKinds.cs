using Doughwright.Engine.Cases.Kinds;

namespace Doughwright.Engine.Cases;

/// <summary>The closed list of kinds. A new one is a row here and a class in Kinds; docs/evidence.md tells how it is written.</summary>
internal static class CaseKinds
{
    public static IReadOnlyList<CaseKind> All { get; } =
    [
        new RiseKind(),
        new YeastGrowthKind(),
        new YeastSpeedKind(),
        new SourdoughGrowthKind(),
        new CoolingKind("cooling"),
        new CoolingKind("warming"),
        new MixKind(),
        new ScaldKind(),
        new BakeKind(),
        new BoilingKind(),
        new WaterActivityKind(),
        new ThermalKind(),
    ];

    public static CaseKind? Find(string name) => All.FirstOrDefault(kind => kind.Name == name);
}
