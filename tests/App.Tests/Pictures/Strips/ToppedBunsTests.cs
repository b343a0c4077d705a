using System.Globalization;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Files;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Buns with four things on them, two before the bake and two after: each is named, and what is put on after the bake was never in the oven.</summary>
public class ToppedBunsTests
{
    private const string Buns = """
        doughwright: 1
        title: Harbour herb and honey buns
        make: 12 buns of 70 g
        home:
          name: Harbour
          air: 21 C
          oven: fan
        parts:
          dough:
            strong white flour: 480 g
            milk: 270 g, at 30 C
            butter: 50 g, soft
            salt: 9 g
            sugar: 30 g
            instant yeast: 5 g
          egg wash:
            kind: wash
            egg: 20 g
          herbs:
            kind: topping
            thyme: 4 g
          syrup:
            honey: 30 g
            water: 20 g
          icing:
            icing sugar: 90 g
            lemon juice: 15 g
        steps:
          mix:
            of: dough
            way: by hand
            hands: 12 min
            measured: 26 C
          bulk:
            of: dough
            cover: covered
            ends: doubled
            measured: 80 min
            cue: at the tape
          shape:
            of: dough
            hands: 12 min
          proof:
            of: dough
            cover: cloth
            measured: 45 min
            cue: springs back slowly
          brush:
            kind: glaze
            of: egg wash
            hands: 3 min
          scatter:
            kind: finish
            of: herbs
            hands: 2 min
          bake:
            of: dough
            oven: 180 C fan
            measured: 16 min
            cue: golden
          gloss:
            kind: glaze
            of: syrup
            hands: 3 min
          ice:
            kind: glaze
            of: icing
            hands: 4 min
          cool:
            of: dough
            ends: after 20 min

        """;

    [Theory]
    [InlineData("home")]
    [InlineData("winter-cottage")]
    [InlineData("summer")]
    public void EverythingPutOn_IsNamed(string kitchen)
    {
        var texts = Wide(kitchen).Texts.Select(text => text.Text).ToList();
        Assert.All(["Egg wash", "Herbs", "Syrup", "Icing"], name => Assert.Contains(texts, text => text.StartsWith(name, StringComparison.Ordinal)));
    }

    [Fact]
    public void WhatLiesOnTheBakedPiece_IsNoPartOfWhatWasWeighed()
    {
        var strip = Wide("home");
        var line = Assert.Single(strip.OfClass("corel")).Attribute("d")!.Value.TrimStart('M').Split('L').Select(point => double.Parse(point.Split(' ')[1], CultureInfo.InvariantCulture)).ToList();
        // The wash and the herbs went into the oven; the 155 g after it did not.
        Assert.Equal(line[^1], line.Skip(line.Count / 2).Min(), 0.6);
        Assert.Contains(strip.OfClass("strand"), band => band.Attribute("fill")?.Value == "none");
    }

    [Fact]
    public void AStripInAFile_HasItsScaleOfWarmth()
    {
        var choice = new PictureChoice(Rehearsed.OfText(Buns), null, PictureSamples.Metric);
        Assert.All([PictureKind.Strip, PictureKind.Tall], kind =>
        {
            var drawn = new DrawnStrip(choice.Draw(kind)!);
            Assert.Equal(15, drawn.OfClass("chipf").Count());
            Assert.Contains(drawn.Texts, text => text.Text == "220\u00a0°C" && text.Box.Bottom <= drawn.Height);
        });
        Assert.Empty(new Drawn(choice.Draw(PictureKind.Balance)!).OfClass("chipf"));
    }

    private static DrawnStrip Wide(string kitchen) => Of(Rehearsed.OfText(Buns, kitchen));

    private static DrawnStrip Of(Rehearsal run) => new(Picture.Wide(run, run.Course(), StripCases.Metric, new() { Id = "w" }));
}
