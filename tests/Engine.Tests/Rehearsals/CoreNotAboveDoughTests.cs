using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A core that the dough has already when it goes in tells nothing about a bake.</summary>
public class CoreNotAboveDoughTests
{
    [Theory]
    [InlineData("50 C", true)]
    [InlineData("60 C", false)]
    public void CoreAtOrBelowTheDough_IsTold(string core, bool told)
    {
        var text = Texts.Read("demo/recipes/potato-rolls.yaml")
            .Replace("measured: 19 min on 9 November", $"ends: core at {core}\n    measured: 19 min on 9 November", StringComparison.Ordinal)
            .Replace("measured: 26 C on 9 November", "measured: 55 C on 9 November", StringComparison.Ordinal)
            .Replace("measured: 70 min on 9 November", "ends: after 1 min", StringComparison.Ordinal)
            .Replace("measured: 105 min on 9 November", "ends: after 1 min", StringComparison.Ordinal)
            .Replace("    ends: at 2 times its volume\n    ends:", "    ends:", StringComparison.Ordinal)
            .Replace("hands: 15 min", "hands: 1 min", StringComparison.Ordinal)
            .Replace("    fold: at 45 min, 2 min by hand\n", "", StringComparison.Ordinal);
        var rehearsal = Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped);
        Assert.Equal(told, rehearsal.Findings.Any(finding => finding.Kind == "core-not-above-dough"));
    }
}
