using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips;
using Doughwright.Publishing.Wording;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Strips of everything the house has, with the marks of what was found.</summary>
internal static class StripCases
{
    public static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);
    public static readonly Voice Us = new(Words.Shipped, MeasureSystem.Us);

    public static TheoryData<string, string> Runs()
    {
        var runs = new TheoryData<string, string>();
        foreach (var recipe in Rehearsed.Recipes)
        {
            foreach (var kitchen in Rehearsed.Kitchens)
            {
                runs.Add(recipe, kitchen);
            }
        }

        return runs;
    }

    /// <summary>Wide and tall in both measures.</summary>
    public static IEnumerable<DrawnStrip> Of(Rehearsal rehearsal)
    {
        var course = rehearsal.Course();
        var marks = MarksOf(rehearsal);
        foreach (var voice in (Voice[])[Metric, Us])
        {
            yield return new(Picture.Wide(rehearsal, course, voice, new() { Id = "w", Marks = marks }));
            yield return new(Picture.Tall(rehearsal, course, voice, new() { Id = "t", Marks = marks }));
        }
    }

    public static DrawnStrip Wide(Rehearsal rehearsal) => Wide(rehearsal, []);

    public static DrawnStrip Wide(Rehearsal rehearsal, IReadOnlyList<StripMark> marks) => new(Picture.Wide(rehearsal, rehearsal.Course(), Metric, new() { Id = "w", Marks = marks }));

    public static DrawnStrip Tall(Rehearsal rehearsal) => new(Picture.Tall(rehearsal, rehearsal.Course(), Metric, new() { Id = "t" }));

    /// <summary>A mark for every step, every part, a line, and the recipe as a whole.</summary>
    public static IReadOnlyList<StripMark> MarksOf(Rehearsal rehearsal) =>
    [
        .. rehearsal.Steps.Select(step => "steps." + step.Id)
            .Concat(rehearsal.Recipe.Components.Select(component => "parts." + component.Id))
            .Append("parts.dough.butter")
            .Append("")
            .Select((place, i) => new StripMark(i + 1, (MarkShape)(i % 4), place)),
    ];

    /// <summary>Nothing lies over anything else, and nothing leaves the picture.</summary>
    public static void KeepsApart(DrawnStrip strip)
    {
        var texts = strip.Texts.ToArray();
        var marks = strip.Marks.ToArray();
        Assert.NotEmpty(texts);
        for (var i = 0; i < texts.Length; i++)
        {
            var (text, box) = texts[i];
            Assert.True(box.Left >= 0 && box.Top >= 0 && box.Right <= strip.Width && box.Bottom <= strip.Height, $"'{text}' leaves the picture: {box}");
            Assert.All(texts.Skip(i + 1), other => Assert.False(box.Overlaps(other.Box), $"'{text}' and '{other.Text}' lie over each other."));
            Assert.All(marks, mark => Assert.False(box.Overlaps(mark), $"A mark covers '{text}'."));
        }

        for (var i = 0; i < marks.Length; i++)
        {
            Assert.All(marks.Skip(i + 1), other => Assert.False(marks[i].Overlaps(other), "Two marks lie over each other."));
        }
    }

    /// <summary>No text lies on a strand, neither where it hangs nor where it falls or rises into what takes it up.</summary>
    public static void StaysOffStrands(DrawnStrip strip, bool wide)
    {
        var bands = strip.OfClass("strand").Where(path => path.Name.LocalName == "path" && !DrawnStrip.Classes(path).Contains("core")).ToArray();
        foreach (var (text, box) in strip.Texts)
        {
            var (from, to, near, far) = wide ? (box.Left, box.Right, box.Top, box.Bottom) : (box.Top, box.Bottom, box.Left, box.Right);
            foreach (var band in bands)
            {
                for (var place = from; place <= to; place += 0.5)
                {
                    Assert.False(DrawnStrip.Across(band, place, wide) is var (low, high) && low < far && near < high, $"'{text}' lies on a strand at {place}.");
                }
            }
        }
    }

    /// <summary>No text lies across an upright.</summary>
    public static void StaysOffUprights(DrawnStrip strip)
    {
        foreach (var edge in strip.OfClass("edge").Where(line => DrawnStrip.At(line, "x1").Equals(DrawnStrip.At(line, "x2"))))
        {
            var (x, y1, y2) = (DrawnStrip.At(edge, "x1"), DrawnStrip.At(edge, "y1"), DrawnStrip.At(edge, "y2"));
            Assert.All(strip.Texts, text => Assert.False(
                text.Box.Left < x && text.Box.Right > x && text.Box.Top < Math.Max(y1, y2) && text.Box.Bottom > Math.Min(y1, y2),
                $"'{text.Text}' lies across the upright at {x}."));
        }
    }
}
