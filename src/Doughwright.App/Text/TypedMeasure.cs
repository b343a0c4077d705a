using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;

namespace Doughwright.App.Text;

/// <summary>What an author typed, where the figure beside it is in another measure: "4 oz" beside 113 g, "¾ cup" beside 94 g.</summary>
internal static class TypedMeasure
{
    public static string? Of(LineFormula line, MeasureSystem measures)
    {
        var source = line.Source;
        if (source.Household is not null)
        {
            return MixedNumber.Printed(source.Typed);
        }

        // A typed weight is worth a word where the table has the other system.
        var isUs = source.Mass is not null && source.Typed.TrimEnd() is var typed && (typed.EndsWith("oz", StringComparison.Ordinal) || typed.EndsWith("lb", StringComparison.Ordinal));
        return source.Mass is not null && isUs == (measures == MeasureSystem.Metric) && QuantityText.TryMass(source.Typed).Value == source.Mass
            ? source.Typed
            : null;
    }
}
