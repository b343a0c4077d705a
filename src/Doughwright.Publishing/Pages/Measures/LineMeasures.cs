using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Measures;

/// <summary>What stands in the two columns of an ingredient: grams, and ounces with what a US kitchen measures by.</summary>
internal static class LineMeasures
{
    /// <summary>The weight of a line in one system; "all of it" beside a part that goes in whole.</summary>
    public static string In(MeasureSystem system, LineFormula line, Larder larder, Words words)
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

        // What the author measured by is the author's own, and stays where the reader has the same.
        var spoons = line.Ingredient is not { } ingredient ? null
            : Spoons.Has(line.Source.Household, ingredient, larder) ? MixedNumber.Printed(line.Source.Typed)
            : Spoons.Of(line.Mass, ingredient, line.Source.Conditions, larder, words);
        var ounces = Show.Mass(line.Mass, MeasureSystem.Us) is var text && text != Show.Mass(line.Mass) ? text : null;
        return (ounces, spoons) switch
        {
            ({ }, { }) => voice.Say("page.ounces-or", ("ounces", ounces), ("spoons", spoons)),
            _ => ounces ?? spoons ?? words["page.no-measure"],
        };
    }
}
