using System.Globalization;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Heat;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Area is heat, in the picture; the figures beside it add up.</summary>
public class HeatPictureTests
{
    public static TheoryData<double, double, double> Balances => new() { { 21, 26, 26.9 }, { 17, 26, 30.4 }, { 30, 26, 14 }, { 21, 33, 68 }, { 26, 26, 26 }, { 5, 24, 70 } };

    [Theory]
    [MemberData(nameof(Balances))]
    public void Areas_AreHeats(double air, double mixed, double free)
    {
        var balance = PictureSamples.Heat(air, mixed, free);
        AreasAreHeats(balance, HeatPicture.Draw(balance, Samples.Rehearsal, PictureSamples.Metric, "h"));
    }

    [Fact]
    public void Areas_AreHeats_InEveryDemo()
    {
        var seen = 0;
        foreach (var (_, run) in DemoRuns.All)
        {
            foreach (var balance in Of(run))
            {
                AreasAreHeats(balance, HeatPicture.Draw(balance, run, PictureSamples.Metric, "h"));
                seen++;
            }
        }

        Assert.InRange(seen, DemoRuns.All.Count, int.MaxValue);
    }

    [Fact]
    public void FreeParts_HaveAVioletFrame_AndVioletNames()
    {
        var drawn = new Drawn(HeatPicture.Draw(PictureSamples.Heat(17, 26, 30.4), Samples.Rehearsal, PictureSamples.Metric, "h"));
        Assert.Equal(2, drawn.OfClass("free").Count());
        Assert.Equal(["Potato", "30\u00a0°C", "Scald", "30\u00a0°C"], drawn.Lines(phone: false).Where(line => line.Class == "slipt").Select(line => line.Text));
        Assert.Single(drawn.OfClass("heatmix"));
    }

    /// <summary>Forty lines, most of them tiny: each is drawn, and what has no room for a name is told together.</summary>
    [Fact]
    public void ManySmallShares_AreDrawn_AndToldTogether()
    {
        var shares = Enumerable.Range(1, 40).Select(i => PictureSamples.Share("line " + i, i * i * 0.3, 2, 21, 26)).ToList();
        var balance = new HeatBalance("mix", "dough", PictureSamples.Celsius(26), [.. shares, PictureSamples.Work(-shares.Sum(share => share.Kilojoules))]);
        var drawn = new Drawn(HeatPicture.Draw(balance, Samples.Rehearsal, PictureSamples.Metric, "h"));
        Assert.InRange(drawn.All("rect").Count(), 39, 41);
        Assert.Contains("and the rest", drawn.Texts);
    }

    [Fact]
    public void Table_AddsUp_InEveryDemo()
    {
        foreach (var (_, run) in DemoRuns.All)
        {
            Assert.All(Of(run), balance => AddsUp(HeatTable.Of(balance, run, PictureSamples.Metric)));
        }
    }

    [Fact]
    public void Table_TellsTheFreePartsBelowTheSum()
    {
        var table = HeatTable.Of(PictureSamples.Heat(21, 26, 26.9), Samples.Rehearsal, PictureSamples.Metric);
        Assert.Equal([RowTone.Sum, RowTone.Free, RowTone.Free], table.Foot.Select(row => row.Tone));
        Assert.Equal("Without scald and potato", table.Foot[0].Name);
        Assert.Equal("Scald, to close it", table.Foot[1].Name);
        Assert.Equal(["180", "3.12", "26.9", "+0.51"], table.Foot[1].Cells);
        Assert.Equal(["320", "1.80", "21.0", "−2.88"], table.Rows.Single(row => row.Name == "Strong white flour").Cells);
        AddsUp(table);
    }

    private static void AddsUp(FigureTable table)
    {
        var (sum, free) = (table.Foot[0], table.Foot.Skip(1));
        Assert.Equal(Figure(sum), table.Rows.Sum(Figure));
        Assert.Equal(0, Figure(sum) + free.Sum(Figure));
    }

    private static decimal Figure(FigureRow row) =>
        decimal.Parse(row.Cells[^1].Replace('\u2212', '-').Replace(",", "", StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture);

    private static IEnumerable<HeatBalance> Of(Rehearsal run) =>
        run.Steps.Where(step => step.Kind == StepKind.Mix).Select(step => run.HeatOf(step.Id)).OfType<HeatBalance>();

    /// <summary>Every drawn rectangle has the area of one share, on one scale for all; they are compared by size.</summary>
    private static void AreasAreHeats(HeatBalance balance, string picture)
    {
        var drawn = new Drawn(picture);
        var line = Drawn.Value(drawn.OfClass("bench").Single(), "y1");
        var rects = drawn.All("rect").Select(rect => (Width: Drawn.Value(rect, "width"), Height: Drawn.Value(rect, "height"), Above: Drawn.Value(rect, "y") < line - 0.01)).ToList();
        var total = balance.Shares.Sum(share => Math.Abs(share.Kilojoules));
        var scale = rects.Sum(rect => rect.Width * rect.Height) / total;
        foreach (var above in new[] { true, false })
        {
            var areas = rects.Where(rect => rect.Above == above).OrderByDescending(rect => rect.Width * rect.Height).ToList();
            var heats = balance.Shares.Select(share => above ? share.Kilojoules : -share.Kilojoules).Where(heat => heat > 0).OrderDescending().ToList();
            Assert.InRange(areas.Count, 0, heats.Count);
            foreach (var (rect, heat) in areas.Zip(heats))
            {
                // Coordinates are rounded to tenths.
                var rounding = (0.06 * (rect.Width + rect.Height)) + (0.02 * heat * scale) + 0.1;
                Assert.InRange(rect.Width * rect.Height, (heat * scale) - rounding, (heat * scale) + rounding);
            }

            // What is not drawn is too flat to be seen.
            Assert.All(heats.Skip(areas.Count), heat => Assert.InRange(heat * scale, 0, 0.06 * 480));
        }
    }
}
