using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Strips.Labels;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Every upright has a name that hangs from it, however close the next one stands.</summary>
public class StripHeadTests
{
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void EveryUpright_HasTheNameOfItsStep(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        foreach (var (strip, words) in Drawn(rehearsal))
        {
            var plan = Plan.Of(rehearsal, rehearsal.Course());
            var uprights = Uprights(strip, plan);
            foreach (var (upright, step) in uprights.Zip(plan.Edges))
            {
                // A name hangs from the upper end of its upright, 4 units beside it.
                var hung = strip.All("text").Where(text => text.Attribute("class")?.Value == "sh"
                    && Math.Abs(DrawnStrip.At(text, "y") - upright.Top - 12) < 0.2
                    && Math.Abs(DrawnStrip.At(text, "x") - upright.X - (text.Attribute("text-anchor")?.Value == "end" ? -4 : 4)) < 0.2).Select(text => text.Value).ToList();
                Assert.Contains(hung, name => name == words.Name(step) || name == words.ShortName(step));
            }
        }
    }

    /// <summary>Nobody's mark stands under another step's head: between two uprights stands only what is of the first.</summary>
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void AMarkUnderAHead_IsOfThatStep(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        foreach (var step in plan.Edges)
        {
            var strip = StripCases.Wide(rehearsal, [new(1, Publishing.Pictures.Drawing.MarkShape.Note, "steps." + step.Id)]);
            var uprights = Uprights(strip, plan);
            var own = uprights[plan.Edges.ToList().IndexOf(step)];
            var mark = Assert.Single(strip.Marks);
            var (x, y) = ((mark.Left + mark.Right) / 2, (mark.Top + mark.Bottom) / 2);

            // Over all heads it stands at the time of its step; else behind the name, or under it and before the next upright.
            var next = uprights.Where(upright => upright.X > own.X + 0.1 && upright.Top <= y).Select(upright => upright.X).DefaultIfEmpty(strip.Width).Min();
            Assert.True(y < 24 ? Math.Abs(x - Math.Max(11, own.X)) <= 22.1 : x > own.X && x < next, $"The mark of {step.Id} stands at {x}, {y}; its upright at {own.X}, the next at {next}.");
        }
    }

    private static IEnumerable<(DrawnStrip Strip, StripWords Words)> Drawn(Rehearsal rehearsal)
    {
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        yield return (StripCases.Wide(rehearsal), new(plan, StripCases.Metric));
        yield return (StripCases.Of(rehearsal).First(), new(plan, StripCases.Metric));
    }

    /// <summary>Those of the steps, in order; those of folds, which begin at the dough, are drawn after them.</summary>
    private static List<(double X, double Top)> Uprights(DrawnStrip strip, Plan plan) =>
        [.. strip.OfClass("edge").Take(plan.Edges.Count).Select(line => (DrawnStrip.At(line, "x1"), DrawnStrip.At(line, "y1")))];
}
