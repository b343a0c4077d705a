using Doughwright.Engine.Cases;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Cases;

/// <summary>A case is answered as a rehearsal answers: the same models, the same priors.</summary>
public class CaseModelTests
{
    private const string Rise = """
        doughwright: 1
        case: rise
        title: A dough
        kind: rise
        source:
          title: Nobody
          read: from memory
          licence: ours
        conditions:
          dough:
            strong white flour: 500 g
            water: 325 g
            salt: 10 g
            fresh yeast: 10 g
          start: 24 C
          air: 19 C
          vessel: steel bowl, 500 g
          altitude: 1200 m
        measured:
          time to volume:
            points:
              - 2, 1 h to 2 h
              - 3, 1 h to 2 h

        """;

    private static SeriesResult Run(string text)
    {
        var reading = CaseSamples.Read(text);
        Assert.Empty(reading.Findings);
        return Assert.Single(CaseRunner.Run(reading.Case!).Series);
    }

    /// <summary>The same dough as a recipe of which nobody timed anything.</summary>
    [Fact]
    public void Rise_IsThatOfARecipeNobodyTimed()
    {
        var recipe = RecipeText.Read("""
            doughwright: 1
            title: The same
            home:
              air: 19 C
              altitude: 1200 m
            parts:
              dough:
                strong white flour: 500 g
                water: 325 g
                salt: 10 g
                fresh yeast: 10 g
            steps:
              mix:
                of: dough
                vessel: none
                ends: after 1 min
                measured: 24 C
              bulk:
                of: dough
                vessel: steel bowl, 500 g
                cover: covered
                ends: doubled

            """);
        Assert.True(recipe.Sound, string.Join(", ", recipe.Findings.Select(finding => finding.Id)));
        var bulk = Rehearser.Rehearse(recipe.Recipe!, Larder.Shipped).FindStep("bulk")!.Time!.Value;
        var point = Run(Rise).Points[0];
        Assert.Equal(bulk.Likely.Minutes / 60, point.Computed!.Value, 1e-9);
        Assert.Equal(bulk.Low.Minutes / 60, point.Low!.Value, 1e-9);
        Assert.Equal(bulk.High!.Value.Minutes / 60, point.High!.Value, 1e-9);
    }

    [Fact]
    public void Speed_AtItsReference_IsOneInEveryLane()
    {
        var text = Rise[..Rise.IndexOf("  time to volume", StringComparison.Ordinal)] + "  speed by altitude:\n    reference: 1200 m\n    points:\n      - 1200 m, 0.9 to 1.1\n      - 0 m, 0.5 to 1.1\n";
        var result = Run(text);
        Assert.Equal(1, result.Points[0].Computed!.Value, 1e-12);
        Assert.Null(result.Points[0].InRange);
        Assert.InRange(result.Points[1].Computed!.Value, 0.5, 0.95);
    }

    [Fact]
    public void Volume_AtTheTimeItTakes_IsTheVolume()
    {
        var minutes = Run(Rise).Points[0].Computed!.Value * 60;
        var text = Rise[..Rise.IndexOf("  time to volume", StringComparison.Ordinal)]
            + FormattableString.Invariant($"  volume:\n    points:\n      - {minutes:F6} min, 1.9 to 2.1\n");
        Assert.Equal(2, Run(text).Points[0].Computed!.Value, 0.01);
    }

    [Fact]
    public void TimeToACore_IsWhenTheCoreIsThere()
    {
        var cooled = Run(CaseSamples.Ball).Points[1].Computed!.Value;
        var text = CaseSamples.Ball[..CaseSamples.Ball.IndexOf("  core temperature:", StringComparison.Ordinal)]
            + FormattableString.Invariant($"  time to core temperature:\n    points:\n      - {cooled:F6} C, 50 min to 70 min\n      - 3 C, 1 h to 2 h\n");
        var result = Run(text);
        Assert.Equal(60, result.Points[0].Computed!.Value, 0.1);
        Assert.Null(result.Points[1].Computed);
    }

    /// <summary>Long after, a body is as warm as its air; a coefficient that is not stated has its spread.</summary>
    [Fact]
    public void Cooling_OfAPlace_HasTheSpreadOfThePlace_AndEndsAtTheAir()
    {
        var text = CaseSamples.Ball.Replace("  coefficient: 8 W/(m² K)\n", "  where: fridge\n", StringComparison.Ordinal)
            .Replace("- 2 h, 57 F, within 2 F", "- 40 d, 4 C", StringComparison.Ordinal);
        var result = Run(text);
        Assert.NotNull(result.Points[0].InRange);
        Assert.Equal(Run(CaseSamples.Ball).Points[0].Computed!.Value, result.Points[0].Computed!.Value, 1e-3);
        Assert.Equal(4, result.Points[2].Computed!.Value, 1e-3);
    }

    [Theory]
    [InlineData("shape: ball\n  mass: 500 g", "shape: bowl\n  mass: 500 g\n  vessel: steel bowl, 500 g")]
    [InlineData("shape: ball\n  mass: 500 g", "shape: layer\n  thickness: 2 cm")]
    [InlineData("shape: ball\n  mass: 500 g", "shape: layer\n  thickness: 2 cm\n  faces: one")]
    [InlineData("shape: ball\n  mass: 500 g", "shape: roll\n  diameter: 6 cm")]
    [InlineData("shape: ball\n  mass: 500 g", "shape: cylinder\n  diameter: 10 cm\n  height: 6 cm")]
    [InlineData("shape: ball\n  mass: 500 g", "shape: brick\n  length: 12 cm\n  width: 8 cm\n  height: 6 cm")]
    [InlineData("kind: cooling", "kind: warming")]
    public void EveryShape_IsFollowed(string piece, string instead)
    {
        var reading = CaseSamples.With(piece, instead);
        Assert.Empty(reading.Findings);
        var points = CaseRunner.Run(reading.Case!).Series[0].Points;
        Assert.True(points[0].Computed > points[1].Computed && points[1].Computed > points[2].Computed);
    }

    /// <summary>Twice as thick from both faces is as thick from one.</summary>
    [Fact]
    public void LayerFromOneFace_IsHalfALayerFromBoth()
    {
        double?[] Core(string shape) => [.. CaseRunner.Run(CaseSamples.With("shape: ball\n  mass: 500 g", shape).Case!).Series[0].Points.Select(point => point.Computed)];
        Assert.Equal(Core("shape: layer\n  thickness: 4 cm"), Core("shape: layer\n  thickness: 2 cm\n  faces: one"));
    }
}
