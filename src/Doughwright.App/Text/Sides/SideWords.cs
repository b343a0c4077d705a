using System.Collections;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text.Sides;

/// <summary>What differs between two recipes, in words: the same in a terminal and on the desk.</summary>
internal sealed class SideWords(Recipe first, Recipe second, Voice voice)
{
    private readonly SideValues firstValues = new(first, voice);
    private readonly SideValues secondValues = new(second, voice);

    public IReadOnlyList<SideRow> Rows(IEnumerable<RecipeDifference> differences) => [.. differences.Select(Row)];

    public SideRow Row(RecipeDifference difference)
    {
        var (one, other) = (firstValues.Cell(difference.Aspect, difference.First), secondValues.Cell(difference.Aspect, difference.Second));
        if (difference is { Aspect: Aspect.Photo, First: null } or { Aspect: Aspect.Photo, Second: null })
        {
            // Its words stand in what the row is about.
            var shown = new SideCell(voice.Words["sides.shown"]);
            (one, other) = (difference.First is null ? one : shown, difference.Second is null ? other : shown);
        }

        if (one == other)
        {
            other = new(voice.Words["sides.otherwise"]);
        }

        return new(What(difference), one, other, By(difference), difference);
    }

    /// <summary>What it is about: a line with its part, a step with what of it.</summary>
    public string NameOf(RecipeDifference difference) => What(difference);

    private string What(RecipeDifference difference)
    {
        var aspect = difference.Aspect == Aspect.Photo
            ? voice.Say("sides.what.photo", ("words", difference.Second ?? difference.First))
            : voice.Member(difference.Aspect);
        return Capital.Of(difference switch
        {
            { Step: { } id } when difference.Aspect == Aspect.Step => voice.Say("sides.what.step", ("step", StepOf(id))),
            { Step: { } id } => voice.Say("sides.what.of-step", ("step", StepOf(id)), ("aspect", aspect)),
            { Line: { } line, Part: { } part, Aspect: Aspect.Amount or Aspect.Line } => voice.Say("sides.what.line", ("line", LineOf(part, line)), ("part", PartOf(part))),
            { Line: { } line, Part: { } part } => voice.Say("sides.what.of-line", ("line", LineOf(part, line)), ("part", PartOf(part)), ("aspect", aspect)),
            { Part: { } part } when difference.Aspect == Aspect.Part => voice.Say("sides.what.part", ("part", PartOf(part))),
            { Part: { } part } => voice.Say("sides.what.of-part", ("part", PartOf(part)), ("aspect", aspect)),
            { Aspect: Aspect.Photo } => aspect,
            { Item: { } item } => voice.Say("sides.what.item", ("aspect", aspect), ("item", item.Replace("\n", voice.Words["list-comma"], StringComparison.Ordinal))),
            _ => aspect,
        });
    }

    /// <summary>The difference with its sign and unit as it is shown, so that a reader with a pencil comes to the same.</summary>
    private string By(RecipeDifference difference) => (difference.First, difference.Second, difference.FirstNumber, difference.SecondNumber) switch
    {
        (null, _, _, _) when difference.Aspect == Aspect.Photo => voice.Words["sides.added"],
        (_, null, _, _) when difference.Aspect == Aspect.Photo => voice.Words["sides.taken-out"],
        (null or ICollection { Count: 0 }, _, _, _) => voice.Words["sides.new"],
        (_, null or ICollection { Count: 0 }, _, _) => voice.Words["sides.gone"],
        (_, _, { } one, { } other) when one.Value != other.Value => SignedBy.Of(one, other, voice),
        _ => voice.Words["sides.other"],
    };

    private string StepOf(string id) => (first.FindStep(id) ?? second.FindStep(id))?.Name ?? id;

    private string PartOf(string id) => (first.FindComponent(id) ?? second.FindComponent(id))?.Name ?? id;

    private string LineOf(string part, string id) => Line(first, part, id) ?? Line(second, part, id) ?? id;

    private static string? Line(Recipe recipe, string part, string id) => recipe.FindComponent(part)?.Lines.FirstOrDefault(line => line.Id == id)?.Name;
}
