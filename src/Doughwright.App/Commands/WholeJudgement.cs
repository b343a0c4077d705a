using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;

namespace Doughwright.App.Commands;

/// <summary>Everything that can be found about a text, from its letters to the rehearsal at home.</summary>
/// <param name="Recipe">Null when a line was not understood.</param>
/// <param name="All">All findings, the accepted ones too.</param>
/// <param name="Judged">What stands and what is accepted.</param>
internal sealed record WholeJudgement(Recipe? Recipe, IReadOnlyList<Finding> All, Judgement Judged)
{
    /// <summary>The ways out of what stands, numbered as the list shows them.</summary>
    public Offers Offers => Offers.Of(Judged.Open, Recipe);

    public static WholeJudgement Of(InputFile file)
    {
        var (reading, findings, understood) = CommandRun.Understand(file);
        if (!understood)
        {
            return new(null, findings, new(findings, []));
        }

        var recipe = reading.Recipe!;
        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped);
        var all = FindingList.Of(file.Text, recipe, rehearsal, findings);
        var judged = Acceptances.Judge(all, recipe);
        return new(recipe, all, judged with { Open = FindingList.Of(file.Text, judged.Open) });
    }

    /// <summary>Of a text that came of this one.</summary>
    public static WholeJudgement Of(InputFile file, string text) => Of(file with { Text = text });
}
