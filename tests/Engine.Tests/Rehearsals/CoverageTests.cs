using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// What a range of 10 to 90 % is worth once a step is timed at home. Five hundred times all that is uncertain is drawn from the priors; each is baked at
/// home by the model, timed by its author with an author's error, and told to a colder kitchen higher up with the same oven. How often does the range
/// told there hold what that dough does there?
/// </summary>
/// <remarks>
/// With the 31 draws of a rehearsal 77 to 80 of 100 ranges hold. The proof of the rolls holds 74 with 31 draws, below what is asked, and 78 with
/// 255: it hangs on many draws at once, of which 31 keep only some apart; so it is asked of many here, and told as a weakness in docs/method.md.
/// A step that cools at home has no truth here: what another kitchen's air adds is known only where it was timed.
/// Authors misread a rise and a bake by what the sources rise-reading and bake-reading give. It tells that ranges follow from the priors, not that the priors are right: that is for the published cases.
/// </remarks>
public class CoverageTests(ITestOutputHelper output)
{
    private const int Tries = 500;

    /// <summary>Truths are draws from here on. A rehearsal takes the first 31 for its range, and its truth may be none of them.</summary>
    private const int FirstTruth = 512;

    private static readonly Formula Tin = Formula.Balance(RecipeText.Read(Texts.Read("demo/recipes/tin-loaf.yaml")).Recipe!, Larder.Shipped);

    /// <summary>The potato rolls as if nobody had timed them: what is told of them is how far they rise.</summary>
    private static readonly Formula Rolls = Untimed(Formula.Balance(RecipeText.Read(Texts.Read("demo/recipes/potato-rolls.yaml")).Recipe!, Larder.Shipped));

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("tin", "bulk", 0.10, 32)]
    [InlineData("tin", "bake", 0.06, 32)]
    [InlineData("rolls", "bulk", 0.10, 32)]
    [InlineData("rolls", "bake", 0.06, 32)]
    [InlineData("rolls", "proof", 0.10, 256)]
    public void EightOfTenRanges_HoldWhatHappens(string recipe, string id, double readingSpread, int lanes)
    {
        var untimed = recipe == "tin" ? Tin : Rolls;
        Request away = new() { Kitchen = untimed.Recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(17)), Altitude = Length.FromMetres(1200) } };
        var home = HomeRun.Of(untimed, 2 * FirstTruth);
        var atHome = home.Result.Find(id)!.Minutes!.Value;
        var elsewhere = Rehearser.Rehearse(home, Larder.Shipped, away).Kept.Find(id)!.Minutes!.Value;
        var reading = Draws.Normal(39, 2 * FirstTruth);
        var (held, told, below) = (0, 0, 0);
        for (var draw = FirstTruth; draw < FirstTruth + Tries; draw++)
        {
            if (!double.IsFinite(atHome[draw]) || !double.IsFinite(elsewhere[draw]))
            {
                continue;
            }

            var timed = Duration.FromMinutes(atHome[draw] * Elementary.Exp(readingSpread * reading[draw]));
            var range = Rehearser.Rehearse(Timed(untimed, id, timed), Larder.Shipped, away, lanes).FindStep(id)!.Time!.Value;
            told++;
            held += range.Low.Minutes <= elsewhere[draw] && !(range.High?.Minutes < elsewhere[draw]) ? 1 : 0;
            below += elsewhere[draw] < range.Low.Minutes ? 1 : 0;
        }

        output.WriteLine($"{recipe} {id} {lanes}: {held} of {told} ranges hold, {below} lie wholly above");
        Assert.InRange(told, 0.98 * Tries, Tries);
        Assert.InRange(held / (double)told, 0.75, 0.85);
    }

    private static Formula Untimed(Formula formula) => With(formula, step => step with
    {
        Measured = null,
        End = step.Kind switch { StepKind.Proof => new StepEnd.AtGrowth(1.7), StepKind.Bake => new StepEnd.AtCore(Temperature.FromCelsius(94)), _ => step.End },
    });

    private static Formula Timed(Formula untimed, string id, Duration minutes) =>
        With(untimed, step => step.Id == id ? step with { Measured = new(minutes, null, null, 1) } : step);

    private static Formula With(Formula formula, Func<Step, Step> change) => formula with { Recipe = formula.Recipe with { Steps = [.. formula.Recipe.Steps.Select(change)] } };
}
