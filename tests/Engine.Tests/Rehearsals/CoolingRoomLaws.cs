using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// What every cooling owes its room, at every degree from 15 °C to 35 °C: the warmer the air, the longer a thing takes to come to one temperature (Newton's
/// law of cooling), the likely thing as the quick and the slow one.
/// </summary>
public class CoolingRoomLaws
{
    /// <summary>Minutes: a bake in a warm room is a little shorter, and leaves a loaf that is not quite the same.</summary>
    private const double AnotherLoaf = 0.15;

    [Theory]
    [InlineData("hearth-loaf", "cool")]
    [InlineData("tin-loaf", "cool")]
    [InlineData("pilot-ring", "cool")]
    [InlineData("quayside-pan-bread", "cool")]
    [InlineData("potato-rolls", "cool")]
    [InlineData("potato-rolls", "mash")]
    public void WarmerRoom_NeverAsksForLess(string recipe, string step)
    {
        var reading = RecipeText.Read(Texts.Read($"demo/recipes/{recipe}.yaml"));
        (double Low, double Likely, double High)? colder = null;
        var told = 0;
        for (var air = 15; air <= 35; air++)
        {
            var rehearsal = In(reading.Recipe!, air);
            // At home the author's minutes stand, without a range.
            if (rehearsal.AtHome || rehearsal.FindStep(step)!.Time is not { High: { } high } time)
            {
                continue;
            }

            var (low, likely) = (time.Low.Minutes, time.Likely.Minutes);
            TestContext.Current.TestOutputHelper?.WriteLine($"{air} °C: {low:F2}, {likely:F2}, {high.Minutes:F2} min");
            Assert.InRange(likely, low, high.Minutes);
            Assert.InRange(low, 1, high.Minutes - 0.5);
            if (colder is { } before)
            {
                Assert.True(low >= before.Low - AnotherLoaf, $"The low end falls at {air} °C: from {before.Low} min to {low} min.");
                Assert.True(likely >= before.Likely - AnotherLoaf, $"The likely time falls at {air} °C: from {before.Likely} min to {likely} min.");
                Assert.True(high.Minutes >= before.High - AnotherLoaf, $"The high end falls at {air} °C: from {before.High} min to {high.Minutes} min.");
            }

            colder = (low, likely, high.Minutes);
            told++;
        }

        // A mash that is to be used at 28 °C never comes there in a warmer room, and that is said.
        Assert.InRange(told, 13, 21);
    }

    private static Rehearsal In(Recipe recipe, double air) =>
        Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = recipe.Home with { Air = AirProfile.Constant(Bake.Celsius(air)) } });
}
