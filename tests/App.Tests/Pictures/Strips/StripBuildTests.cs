using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Strips of recipes of every build, and of names that wish the page ill.</summary>
public class StripBuildTests
{
    private static readonly string[] Hostile = ["<script>alert(1)</script>", "\" onload=\"x", "' & ]]> <b>", new('w', 200), "名前 ⟦🍞⟧ 名前名前名前名前名前名前", "\u202eturned"];

    [Theory]
    [MemberData(nameof(InventedRecipes.All), MemberType = typeof(InventedRecipes))]
    public void EveryBuild_IsDrawn(string text) => Assert.All(StripCases.Of(Rehearsed.OfText(text)), StripCases.KeepsApart);

    [Fact]
    public void HostileNames_DoNoHarm()
    {
        var recipe = RecipeText.Read(InventedRecipes.Everything).Recipe!;
        foreach (var name in Hostile)
        {
            var named = recipe with
            {
                Title = name,
                Make = recipe.Make! with { What = name },
                Components = [.. recipe.Components.Select(component => component with { Name = name, Lines = [.. component.Lines.Select(line => line with { Name = name })] })],
                Steps = [.. recipe.Steps.Select(step => step with { Name = name, Cue = name })],
            };
            Assert.All(StripCases.Of(Rehearsed.In(named)), strip =>
            {
                StripCases.KeepsApart(strip);
                Assert.DoesNotContain(strip.Root.Descendants(), element => element.Name.LocalName is "script" or "b");
                Assert.DoesNotContain(strip.Root.DescendantsAndSelf().SelectMany(element => element.Attributes()), attribute => attribute.Name.LocalName == "onload");
            });
        }
    }

    [Fact]
    public void Parts_GoInTheirOwnManner()
    {
        var rehearsal = Rehearsed.OfText(InventedRecipes.Everything);
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        var manners = plan.Strands.ToDictionary(strand => strand.Component, strand => strand.Manner);
        Assert.Equal("dough", plan.Body!.Strand.Component);
        Assert.All(["poolish", "scald", "potato", "soaker"], part => Assert.Equal(Manner.Winds, manners[part]));
        Assert.Equal(Manner.LaidIn, manners["plums"]);
        Assert.Equal(Manner.Poured, manners["glaze"]);
        Assert.Equal(["wash"], plan.Washes.Select(wash => wash.Component));
    }

    /// <summary>Strands that are there together hang apart; what is taken up first hangs lowest.</summary>
    [Theory]
    [MemberData(nameof(InventedRecipes.All), MemberType = typeof(InventedRecipes))]
    public void Lanes_KeepApart(string text)
    {
        var rehearsal = Rehearsed.OfText(text);
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        Assert.All([WideLayout.Of(plan, null), TallLayout.Of(plan, 0)], layout =>
        {
            foreach (var (one, other) in layout.Lanes.SelectMany(one => layout.Lanes.Where(other => other != one).Select(other => (one, other))))
            {
                var together = one.Strand.Start < other.Strand.JoinEnd && other.Strand.Start < one.Strand.JoinEnd;
                Assert.False(together && one.Bottom < other.Top && other.Bottom < one.Top, $"{one.Strand.Component} and {other.Strand.Component} lie over each other.");
                Assert.False(together && one.Strand.JoinStart < other.Strand.JoinStart && one.Height > other.Height && other.Strand.Start < one.Strand.JoinStart, $"{one.Strand.Component} falls through {other.Strand.Component}.");
            }
        });
    }

    [Fact]
    public void WhatCannotBeTold_IsSaid()
    {
        var summer = Rehearsed.Of("potato-rolls", "summer");
        Assert.Null(summer.Total);
        var says = StripCases.Wide(summer).Says;
        Assert.Contains("settles at", says, StringComparison.Ordinal);
        Assert.Contains("end not known", says, StringComparison.Ordinal);
    }

    [Fact]
    public void Loss_IsDrawnOnlyWhereTheCourseKnowsIt()
    {
        var rehearsal = Rehearsed.Of("potato-rolls");
        Assert.Empty(StripCases.Wide(rehearsal).OfClass("steam"));
        var course = rehearsal.Course();
        var lighter = course with { Strands = [.. course.Strands.Select(strand => strand.Component == "dough" ? Lighter(strand) : strand)] };
        var drawn = new DrawnStrip(Picture.Wide(rehearsal, lighter, StripCases.Metric, new() { Id = "w" }));
        Assert.Equal(3, drawn.OfClass("steam").Count());
        Assert.Contains("−80\u00a0g", drawn.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownWarmth_HasNoColour()
    {
        var rehearsal = Rehearsed.Of("potato-rolls");
        var course = rehearsal.Course();
        var cold = course with
        {
            Strands = [.. course.Strands.Select(strand => strand with { Stretches = [.. strand.Stretches.Select(stretch => stretch with { Points = [.. stretch.Points.Select(point => point with { Temperature = null })] })] })],
        };
        var drawn = new DrawnStrip(Picture.Wide(rehearsal, cold, StripCases.Metric, new() { Id = "w" }));
        StripCases.KeepsApart(drawn);
        Assert.All(drawn.OfClass("core"), core => Assert.Equal("none", core.Attribute("fill")!.Value));
        Assert.Empty(drawn.OfClass("notch"));
    }

    private static Engine.Rehearsals.Courses.Strand Lighter(Engine.Rehearsals.Courses.Strand strand)
    {
        var bake = strand.Stretches.Single(stretch => stretch.Step == "bake");
        Mass Left(Duration at, Mass mass) => mass - Mass.FromGrams(80 * Math.Clamp((at - bake.Start) / (bake.End - bake.Start), 0, 1));
        return strand with { Stretches = [.. strand.Stretches.Select(stretch => stretch with { Points = [.. stretch.Points.Select(point => point with { Mass = Left(point.At, point.Mass) })] })] };
    }
}
