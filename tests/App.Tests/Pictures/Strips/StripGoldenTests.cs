using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Strips as a whole, as they were approved.</summary>
public class StripGoldenTests
{
    public static TheoryData<string, string> Shown()
    {
        var shown = new TheoryData<string, string>();
        foreach (var recipe in (string[])["potato-rolls", "hearth-loaf", "tin-loaf", "pilot-ring", "quayside-pan-bread", "night-boat-rye"])
        {
            shown.Add(recipe, "home");
            shown.Add(recipe, "mountain");
        }

        return shown;
    }

    [Theory]
    [MemberData(nameof(Shown))]
    public void Strips(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var course = rehearsal.Course();
        Checked($"{recipe}-{kitchen}", string.Join('\n',
        [
            Picture.Wide(rehearsal, course, StripCases.Metric, new() { Id = "w", Marks = [new(1, MarkShape.Missing, "steps.bake"), new(2, MarkShape.Risky, "steps.mix"), new(3, MarkShape.Wrong, "")] }),
            Picture.Tall(rehearsal, course, StripCases.Metric, new() { Id = "t", Marks = [new(4, MarkShape.Note, "parts.dough")] }),
            Picture.Mini(rehearsal, course, StripCases.Metric, new() { Id = "m", Span = Duration.FromHours(23), PixelsPerGram = 0.0205 }),
        ]));
    }

    [Fact]
    public void UsMeasures()
    {
        var rehearsal = Rehearsed.Of("potato-rolls", "winter-cottage");
        Checked("us", Picture.Wide(rehearsal, rehearsal.Course(), StripCases.Us, new() { Id = "w" }));
    }

    [Fact]
    public void Clock() => Checked("clock", Picture.Axis(new() { Span = Duration.FromHours(23), ReadyAt = Duration.FromHours(16) }, StripCases.Metric));

    private static void Checked(string name, string picture) => Golden.Check("strip-" + name, picture.Replace("><", ">\n<", StringComparison.Ordinal) + "\n");
}
