using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>Where water boils, by height or by pressure. It needs no conditions.</summary>
internal sealed class BoilingKind : CaseKind
{
    private const string What = "of";

    private static readonly CaseQuantity ByAltitude = new("boiling point by altitude", Dimension.Altitude, Dimension.Temperature);
    private static readonly CaseQuantity ByPressure = new("boiling point by pressure", Dimension.Pressure, Dimension.Temperature);
    private static readonly CaseQuantity Pressure = new("air pressure", Dimension.Altitude, Dimension.Pressure);

    public override string Name => "boiling";

    public override IReadOnlyList<string> Keys => [What];

    public override IReadOnlyList<CaseQuantity> Quantities => [ByAltitude, ByPressure, Pressure];

    public override ICaseModel? Read(CaseConditions conditions) => conditions.NeedWord<Liquid>(What) is null ? null : new Boiling();

    private enum Liquid
    {
        Water,
    }

    private sealed class Boiling : ICaseModel
    {
        public CaseAnswer Answer(CaseSeries series) => CaseAnswer.Each(series, place => [series.Of switch
        {
            var asked when asked == ByAltitude => SaturatedWater.BoilingPoint(Length.FromMetres(place)).Celsius,
            var asked when asked == ByPressure => SaturatedWater.BoilingPoint(Engine.Quantities.Pressure.FromPascals(place * 1000)).Celsius,
            _ => StandardAtmosphere.PressureAt(Length.FromMetres(place)).Kilopascals,
        }]);
    }
}
