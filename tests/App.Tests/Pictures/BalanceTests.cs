using System.Globalization;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Both sides of the ribbons are equally thick, and the figures add up along rows and columns.</summary>
public class BalanceTests
{
    [Fact]
    public void Ribbons_AreAsThickAtTheLeftAsAtTheRight()
    {
        foreach (var (_, run) in DemoRuns.All)
        {
            var makeup = run.Formula.Makeup()!;
            var layout = new BalanceLayout(makeup);
            Assert.Equal(layout.Lines.Sum(line => line.Bottom - line.Top), layout.Bundles.Values.Sum(bundle => bundle.Bottom - bundle.Top), 0.01);
            for (var row = 0; row < makeup.Rows.Count; row++)
            {
                var shares = MatterOf.All.Where(matter => layout.PlaceOf(row, matter) is not null).Sum(matter => MatterOf.Grams(makeup.Rows[row], matter)!.Value);
                Assert.Equal(makeup.Rows[row].Mass.Grams, shares, 1e-6);
            }
        }
    }

    /// <summary>A picture whose two sides are the same mass has one unit, also for a reader of ounces.</summary>
    [Fact]
    public void APicture_HasOneUnit()
    {
        foreach (var (_, run) in DemoRuns.All)
        {
            var drawn = new Drawn(BalancePicture.Draw(run.Formula.Makeup()!, run.Formula, PictureSamples.Us, "b"));
            Assert.DoesNotContain(drawn.Texts.Append(drawn.Title), text => text.Contains("\u00a0oz", StringComparison.Ordinal) || text.Contains("\u00a0lb", StringComparison.Ordinal));
        }
    }

    /// <summary>In a rope every yarn comes to the front and goes behind, and no gap shows where it does.</summary>
    [Fact]
    public void Yarns_WindRoundOneAnother()
    {
        Ribbon.Way[] yarns = [new(new(0, 0, 0, 40), 0, 90, 30, 0), new(new(0, 0, 0, 40), 30, 120, 10, 0.5)];
        var runs = yarns.Select(yarn => Ribbon.Twist(yarn, 100, 150)).ToArray();
        Assert.All(runs, twist =>
        {
            Assert.InRange(twist.Count, 2, 4);
            Assert.All(twist.Zip(twist.Skip(1)), pair => Assert.True(pair.First.IsFront != pair.Second.IsFront && pair.Second.Centres[0].X < pair.First.Centres[^1].X));
            Assert.Equal((100, 150), (twist[0].Centres[0].X, twist[^1].Centres[^1].X));
        });
        Assert.NotEqual(runs[0][0].IsFront, runs[1][0].IsFront);
        Assert.Equal(15, runs[0][^1].Centres[^1].Y, 1e-9);
        Assert.Equal(35, runs[1][^1].Centres[^1].Y, 1e-9);
    }

    [Fact]
    public void Table_AddsUp_AlongRowsAndColumns()
    {
        foreach (var (_, run) in DemoRuns.All)
        {
            AddsUp(MakeupTable.Of(run.Formula.Makeup()!, run.Formula, PictureSamples.Metric), run.Formula.Dough.Grams);
        }
    }

    [Fact]
    public void TableOfTheRolls_IsWhatTheFormulaSays()
    {
        var table = MakeupTable.Of(PictureSamples.Makeup, Samples.Rehearsal.Formula, PictureSamples.Metric);
        Assert.Equal(["400.0", "271.0", "31.5", "45.5", "53.0", "801.0"], table.Foot[0].Cells);
        Assert.Equal(["100.0", "67.7", "7.9", "11.4", "13.3", "200.3"], table.Foot[1].Cells);
        Assert.Equal(["–", "9.0", "–", "40.5", "0.5", "50.0"], table.Rows[5].Cells);
        AddsUp(table, 801);
    }

    [Fact]
    public void WhatIsNotKnown_IsDashed_AndSaid()
    {
        var makeup = PictureSamples.Of(("strong-white-flour", 500, 500, 0, 0, 0, 0), ("walnut paste", 90, 0, null, 10, null, null));
        var drawn = new Drawn(BalancePicture.Draw(makeup, Samples.Rehearsal.Formula, PictureSamples.Metric, "b"));
        Assert.Single(drawn.OfClass("heatmix"));
        Assert.Contains("Not known", drawn.Texts);
        Assert.Contains("80.0\u00a0g, 20.0\u00a0%", drawn.Texts);
        var table = MakeupTable.Of(makeup, Samples.Rehearsal.Formula, PictureSamples.Metric);
        Assert.Contains("Water, at least", table.Heads.Select(head => head.Text));
        Assert.Equal(["–", "?", "10.0", "?", "?", "80.0", "90.0"], table.Rows[1].Cells);
    }

    /// <summary>Rows and columns of any table of shares add up to totals that are the true ones, rounded.</summary>
    [Fact]
    public void RoundedTables_AddUp_NearTheTruth()
    {
        var random = new Random(20261125);
        for (var trial = 0; trial < 300; trial++)
        {
            var values = Enumerable.Range(0, 1 + random.Next(14))
                .Select(_ => (double[])[.. Enumerable.Range(0, 6).Select(_ => random.Next(3) == 0 ? 0 : Math.Round(random.NextDouble() * 300, random.Next(4)))])
                .ToArray();
            var table = RoundedTable.Of(values);
            for (var row = 0; row < values.Length; row++)
            {
                Assert.InRange(table.RowTotal(row), values[row].Sum() - 0.1001, values[row].Sum() + 0.1001);
                Assert.All(Enumerable.Range(0, 6), column => Assert.InRange(table.Cell(row, column), values[row][column] - 0.1001, values[row][column] + 0.1001));
            }

            Assert.All(Enumerable.Range(0, 6), column =>
            {
                var sum = values.Sum(row => row[column]);
                Assert.InRange(table.ColumnTotal(column), sum - 0.2001, sum + 0.2001);
            });
            Assert.InRange(table.Total, values.Sum(row => row.Sum()) - 0.0501, values.Sum(row => row.Sum()) + 0.0501);
        }
    }

    private static void AddsUp(FigureTable table, double dough)
    {
        var rows = table.Rows.Select(row => row.Cells.Select(Figure).ToArray()).ToList();
        var sum = table.Foot[0].Cells.Select(Figure).ToArray();
        Assert.All(rows.Append(sum), row => Assert.Equal(row[^1], row[..^1].Sum()));
        Assert.All(Enumerable.Range(0, sum.Length), column => Assert.Equal(sum[column], rows.Sum(row => row[column])));
        Assert.InRange((double)sum[^1], dough - 0.051, dough + 0.051);
        var percents = table.Foot[1].Cells.Select(Figure).ToArray();
        Assert.Equal(percents[^1], percents[..^1].Sum());
    }

    private static decimal Figure(string cell) => cell is FigureTable.Nothing or "?" ? 0 : decimal.Parse(cell, NumberStyles.Number, CultureInfo.InvariantCulture);
}
