using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>What a spoon, a cup or a pack of an ingredient weighs.</summary>
/// <param name="How">Where that comes from.</param>
public sealed record MeasureRow(string Unit, Fig Weight, string How)
{
    internal static IReadOnlyList<MeasureRow> All(IReadOnlyList<Measure> measures, Voice voice) =>
    [
        .. measures.Select((measure, index) => new MeasureRow(
            measure.Unit,
            new(voice.Text(measure.Mass), measure.Mass.Grams, FormattableString.Invariant($"measures.{index}.grams")),
            LarderWords.Obtained(measure, voice))),
    ];
}
