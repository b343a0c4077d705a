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

        // A typed weight is worth a word where the table has the other system, and not where it reads the same: small US weights are grams.
        var typed = source.Typed.TrimEnd();
        var isUs = source.Mass is not null && (typed.EndsWith("oz", StringComparison.Ordinal) || typed.EndsWith("lb", StringComparison.Ordinal));
        return source.Mass is not null && isUs == (measures == MeasureSystem.Metric) && QuantityText.TryMass(source.Typed).Value == source.Mass
            && Show.Mass(line.Mass, measures).Replace('\u00a0', ' ') != typed
            ? source.Typed
            : null;
    }
}
