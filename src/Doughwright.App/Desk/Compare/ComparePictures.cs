using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Pictures.Slips;
using Doughwright.Publishing.Pictures.Strips;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>The pictures of two kitchens, as markup.</summary>
internal sealed class ComparePictures
{
    private readonly Comparison comparison;
    private readonly Voice voice;
    private readonly Course first;
    private readonly Course second;
    private readonly Duration span;

    public ComparePictures(Comparison comparison, Voice voice)
    {
        (this.comparison, this.voice) = (comparison, voice);
        (first, second) = (First.Course(), Second.Course());
        // Both on the scale of the longer one.
        span = new[] { Strips.Span(First, first), Strips.Span(Second, second) }.Max();
    }

    private Rehearsal First => comparison.First.Rehearsal;

    private Rehearsal Second => comparison.Second.Rehearsal;

    public string FirstWide => Strips.Wide(First, first, voice, new() { Id = "first-wide", Span = span });

    public string SecondWide => Strips.Wide(Second, second, voice, new() { Id = "second-wide", Span = span });

    public string FirstTall => Strips.Tall(First, first, voice, new() { Id = "first-tall" });

    public string SecondTall => Strips.Tall(Second, second, voice, new() { Id = "second-tall" });

    /// <summary>Between the two, from where a step begins in the first to where it begins in the second.</summary>
    public string Slips => SlipsPicture.Draw(
        First, Second, comparison.First.Name, comparison.Second.Name, voice, "slips", Strips.Places(First, first, span), Strips.Places(Second, second, span));

    /// <summary>The step whose rise is drawn: the bulk of the second kitchen, else what rises first there; null when nothing does.</summary>
    public RehearsedStep? Rising => (second.Rises.FirstOrDefault(rise => Second.FindStep(rise.Step)?.Kind == StepKind.Bulk) ?? second.Rises.FirstOrDefault()) is { } rise
        ? Second.FindStep(rise.Step)
        : null;

    /// <summary>The rise of the second kitchen with the runs beside it; null when nothing rises there.</summary>
    public string? Rise
    {
        get
        {
            if (Rising is not { } step)
            {
                return null;
            }

            var others = new List<OtherRise>();
            Add(others, First, first, comparison.First.Name, step.Id);
            if (comparison.Untouched is { } untouched)
            {
                Add(others, untouched, untouched.Course(), voice.Words["compare.rise.untouched"], step.Id);
            }

            return RisePicture.Draw(second.Rises.First(rise => rise.Step == step.Id), step, others, voice, "compare-rise");
        }
    }

    /// <summary>Where the warmth of the second kitchen's dough comes from; null when that cannot be told.</summary>
    public string? Heat => comparison.Second.MixOfDough is { } mix && Second.HeatOf(mix.Id) is { } balance
        ? HeatPicture.Draw(balance, Second, voice, "compare-heat")
        : null;

    private static void Add(List<OtherRise> others, Rehearsal rehearsal, Course course, string name, string step)
    {
        if (course.Rises.FirstOrDefault(rise => rise.Step == step) is { } curve)
        {
            others.Add(new(name, curve, rehearsal.FindStep(step)?.Time));
        }
    }
}
