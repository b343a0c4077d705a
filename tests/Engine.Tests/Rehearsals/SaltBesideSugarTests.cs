using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Which of the two leaves the yeast no water is named.</summary>
public class SaltBesideSugarTests
{
    [Theory]
    [InlineData("salt: 90 g", "salt-stops-yeast", "sugar-stops-yeast")]
    [InlineData("salt: 7 g", null, "salt-stops-yeast")]
    public void MuchSalt_IsNamed_AndSugarIsNot(string salt, string? told, string silent)
    {
        var text = Texts.Read("demo/recipes/potato-rolls.yaml").Replace("    salt: 7 g", "    " + salt, StringComparison.Ordinal);
        Assert.Contains(salt, text, StringComparison.Ordinal);
        var kinds = Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped).Findings.Select(finding => finding.Kind).ToArray();
        Assert.DoesNotContain(silent, kinds);
        if (told is not null)
        {
            Assert.Contains(told, kinds);
        }
    }
}
