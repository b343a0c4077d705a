using System.Xml.Linq;
using Doughwright.App.Desk.Compare;
using Doughwright.App.Tests.Pictures.Strips;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Compare;

/// <summary>The dashed lines between two strips lead from an upright of the first to the same step's upright in the second, whatever each of them folds away.</summary>
public class CompareSlipsTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    [Theory]
    [MemberData(nameof(ComparePageTests.Demos), MemberType = typeof(ComparePageTests))]
    public void ASlip_LeadsFromUprightToUpright(string recipe)
    {
        using var bench = new Asking.Bench();
        foreach (var query in (string[])["?second=summer", "?second=winter-cottage", "?first=mountain&second=summer", "?first=winter-cottage&second="])
        {
            var comparison = Compared(recipe, query, bench);
            var pictures = new ComparePictures(comparison, Voice);
            var (first, second) = (Uprights(pictures.FirstWide, comparison.First.Rehearsal), Uprights(pictures.SecondWide, comparison.Second.Rehearsal));
            var slips = XElement.Parse(pictures.Slips).Descendants("path").Select(path => path.Attribute("d")!.Value).ToList();
            Assert.NotEmpty(second);
            Assert.Equal(first.Count, second.Count);
            Assert.All(first.Zip(second), pair => Assert.Contains($"M{pair.First} 4L{pair.First} 10L{pair.Second} 64L{pair.Second} 70", slips));
        }
    }

    [Theory]
    [InlineData("hearth-loaf", "?second=summer")]
    [InlineData("night-boat-rye", "?second=summer")]
    public void FoldedDays_AreSetBesideEachOther(string recipe, string query)
    {
        using var bench = new Asking.Bench();
        var pictures = new ComparePictures(Compared(recipe, query, bench), Voice);
        Assert.NotEmpty(new DrawnStrip(pictures.FirstWide).OfClass("fold"));
        Assert.NotEmpty(new DrawnStrip(pictures.SecondWide).OfClass("fold"));
    }

    private static Comparison Compared(string recipe, string query, Asking.Bench bench)
    {
        var compared = ComparedRecipe.Open(recipe, bench.Shelf, Words.Shipped, new())!.Recipe!;
        return compared.Compare(CompareQuestion.Of(query, compared.Other), MeasureSystem.Metric);
    }

    /// <summary>Places of the uprights of the steps; those of folds are drawn after them.</summary>
    private static List<string> Uprights(string strip, Rehearsal rehearsal) =>
        [.. new DrawnStrip(strip).OfClass("edge").Take(Plan.Of(rehearsal, rehearsal.Course()).Edges.Count).Select(line => line.Attribute("x1")!.Value)];
}
