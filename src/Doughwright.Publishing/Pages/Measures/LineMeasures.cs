using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Measures;

/// <summary>What stands in the two columns of an ingredient: grams, and what a US kitchen measures by.</summary>
internal static class LineMeasures
{
    /// <summary>The weight of a line in one system; "all of it" beside a part that goes in whole.</summary>
    public static string In(MeasureSystem system, LineFormula line, Words words)
    {
        var voice = new Voice(words, system);
        if (line.Mass <= Mass.Zero)
        {
            return words["not-known"];
        }

        if (system == MeasureSystem.Metric)
        {
            return voice.Text(line.Mass);
        }

        if (line.UsesComponent is not null && line.Source.Mass is null)
        {
            return words["page.all-of-it"];
        }

        // What the author measured by is the author's own, and stays.
        if (line.Source.Household is { } household)
        {
            return voice.Say("page.measure", ("number", household.Amount), ("unit", household.Unit));
        }

        var text = Show.Mass(line.Mass, MeasureSystem.Us);
        return text == Show.Mass(line.Mass) ? words["page.no-measure"] : text;
    }
}
