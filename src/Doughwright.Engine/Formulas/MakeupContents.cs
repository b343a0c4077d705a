using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>What something brings, in grams; null is not known. Flour counts whole.</summary>
internal readonly record struct MakeupContents(double Grams, double Flour, double? Water, double? Sugar, double? Fat)
{
    public MakeupContents Plus(MakeupContents other) =>
        new(Grams + other.Grams, Flour + other.Flour, Water + other.Water, Sugar + other.Sugar, Fat + other.Fat);

    public MakeupContents Times(double factor) => new(Grams * factor, Flour * factor, Water * factor, Sugar * factor, Fat * factor);

    public MakeupRow Row(string line) => new(
        line, Mass.FromGrams(Grams), Mass.FromGrams(Flour), Of(Water), Of(Sugar), Of(Fat), Of(Grams - Flour - Water - Sugar - Fat));

    private static Mass? Of(double? grams) => grams is { } known ? Mass.FromGrams(known) : null;
}
