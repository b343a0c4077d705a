using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pages.Rooms;

namespace Doughwright.App.Tests.Pages;

/// <summary>The table of rooms says what a rehearsal in each of them says.</summary>
public class RoomTableTests
{
    /// <summary>Folded on a phone, a row has no head near it: each time carries the name of its rise.</summary>
    [Fact]
    public void ManyColumns_NameTheirRisesInTheirCells()
    {
        var page = MadePages.Of(File.ReadAllText(House.PathTo("tests", "data", "pages", "three-rises.yaml"))).Document;
        var heads = page.QuerySelectorAll(".rooms.many thead th[dir]:not(.lever)").Select(head => head.FirstChild!.TextContent).ToArray();
        Assert.Equal(3, heads.Length);
        Assert.All(page.QuerySelectorAll(".rooms.many tbody tr"), row => Assert.Equal(heads, row.QuerySelectorAll("td .onfold").Select(name => name.TextContent)));
        Assert.Empty(MadePages.Named("tin-loaf").Document.QuerySelectorAll(".rooms.many, .onfold"));
    }

    [Theory]
    [InlineData("potato-rolls")]
    [InlineData("tin-loaf")]
    [InlineData("hearth-loaf")]
    public void Rooms_GoFromColdToHot_WithHomeMarked(string name)
    {
        var run = MadePages.Named(name).Run;
        var table = run.Rooms!;
        Assert.Equal(table.Rows.Select(row => row.Air.Celsius).Order(), table.Rows.Select(row => row.Air.Celsius));
        Assert.Equal((16.0, 30.0), (table.Rows[0].Air.Celsius, table.Rows[^1].Air.Celsius));
        var own = Assert.Single(table.Rows, row => row.IsHere);
        Assert.Equal(run.Here.Kitchen.Air.At(Duration.Zero), own.Air);
        Assert.Equal(table.Steps.Select(step => step.Time), own.Times.Select(time => time.Time));
    }

    [Theory]
    [InlineData("potato-rolls")]
    [InlineData("hearth-loaf")]
    public void WarmerRoom_NeverTakesLonger(string name)
    {
        var table = MadePages.Named(name).Run.Rooms!;
        foreach (var rise in Enumerable.Range(0, table.Steps.Count))
        {
            var minutes = table.Rows.Select(row => row.Times[rise].Time!.Value.Likely.Minutes).ToArray();
            Assert.All(minutes.Zip(minutes.Skip(1)), pair => Assert.True(pair.First >= pair.Second, $"{pair}"));
        }
    }

    /// <summary>A row is asked for again, as a person would ask for it on the command line.</summary>
    [Fact]
    public void Row_IsTheRehearsalThere()
    {
        var (run, _, _) = MadePages.Named("potato-rolls");
        var row = run.Rooms!.Rows.First(row => row.Air.Celsius == 26);
        var asked = Rehearser.Rehearse(run.Here.Recipe, Engine.Ingredients.Larder.Shipped, new()
        {
            Kitchen = run.Here.Recipe.Home with { Air = AirProfile.Constant(row.Air) },
            Dough = run.Rooms.Held,
            Free = ["scald", "potato"],
        });
        Assert.Equal(asked.Solutions[0].Warmth!.Value.Likely.Celsius, row.Kept!.Warmth!.Value.Celsius, 9);
        Assert.Equal(asked.FindStep("bulk")!.Time, row.Times[0].Time);
        Assert.Equal(asked.FindStep("proof")!.Time, row.Times[1].Time);
    }

    [Fact]
    public void WhatNothingKeeps_GoesAsWritten_AndSaysSo()
    {
        var page = MadePages.Named("hearth-loaf");
        var cold = page.Run.Rooms!.Rows[0];
        Assert.Null(cold.Kept);
        Assert.Equal("as written", page.Document.QuerySelector(".rooms tbody tr .lever")!.TextContent);
        Assert.Contains("as written", page.Document.QuerySelector(".rooms .note")!.TextContent, StringComparison.Ordinal);
        var asWritten = Rehearser.Rehearse(page.Run.Here.Recipe, Engine.Ingredients.Larder.Shipped, new() { Kitchen = page.Run.Here.Recipe.Home with { Air = AirProfile.Constant(cold.Air) } });
        Assert.Equal(asWritten.FindStep("bulk")!.Time, cold.Times[0].Time);
    }

    [Fact]
    public void RiseThatCannotBeTold_IsSaidToBeUnknown()
    {
        var page = MadePages.Of(MadePages.TextOf("potato-rolls").Replace("    instant yeast: 4 g", "    moon yeast: 4 g", StringComparison.Ordinal).Replace("instant yeast, salt", "moon yeast, salt", StringComparison.Ordinal));
        var away = page.Run.Rooms!.Rows.Where(row => !row.IsHere).ToArray();
        Assert.All(away.SelectMany(row => row.Times), time => Assert.Null(time.Time));
        Assert.Contains("not known", page.Document.QuerySelector(".rooms tbody")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void RiseInTheFridge_DoesNotGoWithTheRoom()
    {
        var text = MadePages.TextOf("potato-rolls").Replace("    trays: 2\n    cover: cloth\n", "    trays: 2\n    where: fridge\n    cover: cloth\n", StringComparison.Ordinal);
        var run = MadePages.Of(text).Run;
        Assert.Equal(Where.Fridge, run.Here.Recipe.FindStep("proof")!.Where);
        Assert.Equal(["bulk"], run.Rooms!.Steps.Select(step => step.Id));
    }

    [Fact]
    public void AirByTheClock_HasNoTable()
    {
        var kitchen = MadePages.Named("potato-rolls").Run.Here.Recipe.Home with
        {
            Air = AirProfile.Of([(Duration.Zero, Temperature.FromCelsius(17)), (Duration.FromHours(4), Temperature.FromCelsius(21))]),
        };
        Assert.Null(MadePages.Of(MadePages.TextOf("potato-rolls"), kitchen).Run.Rooms);
    }

    [Theory]
    [InlineData(93.2, 95, 90, 95)]
    [InlineData(95.3, 95, 95, 95)]
    [InlineData(92.4, 90, 90, 95)]
    public void Fives_GoOutwards(double minutes, double near, double below, double above)
    {
        var time = Duration.FromMinutes(minutes);
        Assert.Equal((near, below, above), (Fives.Near(time).Minutes, Fives.Below(time).Minutes, Fives.Above(time).Minutes));
    }
}
