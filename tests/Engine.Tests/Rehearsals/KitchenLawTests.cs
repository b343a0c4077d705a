using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Laws over recipes and kitchens.</summary>
public class KitchenLawTests
{
    private const int Bakes = 60;

    /// <summary>The time marches in steps and finds its end between two of them: differences below this mean nothing.</summary>
    private const double Hair = 1e-6;

    private static Rehearsal In(Bake bake, Kitchen kitchen) => Rehearser.Rehearse(bake.Recipe, Larder.Shipped, new() { Kitchen = kitchen });

    private static double Minutes(Rehearsal rehearsal, string step) => rehearsal.FindStep(step)!.Time?.Likely.Minutes ?? double.PositiveInfinity;

    /// <summary>Kitchens up to 30 °C: the dough stays below the yeast's optimum near 37.</summary>
    [Theory]
    [InlineData("bulk")]
    [InlineData("proof")]
    public void WarmerAir_IsNeverSlowerToRise(string step) => Gen.Select(Bake.Any, Gen.Double[8, 29.5], Gen.Double[0.1, 8]).Sample((bake, air, more) =>
    {
        var home = bake.Recipe.Home;
        var cool = In(bake, home with { Air = AirProfile.Constant(Bake.Celsius(air)) });
        var warm = In(bake, home with { Air = AirProfile.Constant(Bake.Celsius(Math.Min(30, air + more))) });
        AssertNotSlower(cool, warm, step, bake);
    }, iter: Bakes);

    [Theory]
    [InlineData("bulk")]
    [InlineData("proof")]
    public void HigherKitchen_IsNeverSlowerToRise(string step) => Gen.Select(Bake.Any, Gen.Int[-400, 4400], Gen.Int[1, 2000]).Sample((bake, low, more) =>
    {
        var home = bake.Recipe.Home;
        var below = In(bake, home with { Altitude = Length.FromMetres(low) });
        var above = In(bake, home with { Altitude = Length.FromMetres(Math.Min(4500, low + more)) });
        AssertNotSlower(below, above, step, bake);
    }, iter: Bakes);

    [Fact]
    public void LessYeast_IsNeverFaster_WhereNobodyMeasured() => Gen.Select(Bake.Any, Gen.Double[0.3, 0.99]).Sample((bake, share) =>
    {
        var full = Rehearser.Rehearse((bake with { Bulk = null }).Recipe, Larder.Shipped);
        var less = Rehearser.Rehearse((bake with { Bulk = null, Yeast = bake.Yeast * share }).Recipe, Larder.Shipped);
        Assert.True(Minutes(less, "bulk") >= Minutes(full, "bulk") - Hair);
    }, iter: Bakes);

    [Fact]
    public void Ranges_HoldTheLikely_AndEveryNumberIsOne() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample((bake, kitchen) =>
    {
        foreach (var rehearsal in new[] { In(bake, kitchen), In(bake, bake.Recipe.Home) })
        {
            Assert.All(rehearsal.Steps, step => AssertRange(step.Time));
            Assert.All(rehearsal.Steps.SelectMany(step => step.Events), happening => AssertRange(happening.After));
            AssertRange(rehearsal.Total);
            foreach (var component in rehearsal.Components)
            {
                if (component.Mixed is { } mixed)
                {
                    Assert.True(mixed.Low <= mixed.Likely && mixed.Likely <= mixed.High);
                }
            }

            Assert.DoesNotContain("NaN", Picture.Of(rehearsal), StringComparison.Ordinal);
            Assert.DoesNotContain("Infinity", Picture.Of(rehearsal), StringComparison.Ordinal);
        }
    }, iter: Bakes);

    [Fact]
    public void StepWithoutAnEnd_SaysWhatItSettlesAt_OrAFindingSaysWhy() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample((bake, kitchen) =>
    {
        var rehearsal = In(bake, kitchen);
        foreach (var step in rehearsal.Steps.Where(step => step.Time is null))
        {
            Assert.True(step.SettlesAt is not null || rehearsal.Findings.Any(finding => finding.Place == $"steps.{step.Id}"), $"{step.Id}\n{bake}");
            Assert.Null(rehearsal.Total);
        }
    }, iter: Bakes);

    [Fact]
    public void Total_IsWhatTheStepsSay() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample((bake, kitchen) =>
    {
        var rehearsal = In(bake, kitchen);
        if (rehearsal.Total is not { } total)
        {
            return;
        }

        Assert.Equal(total.Likely.Minutes, rehearsal.Steps.Max(step => (step.Start!.Value + step.Time!.Value.Likely).Minutes), 1e-9);
        Assert.Equal(0, rehearsal.Steps.Where(step => !step.Id.EndsWith("-out", StringComparison.Ordinal)).Min(step => step.Start!.Value.Minutes), 1e-9);
        Assert.Equal(rehearsal.Hands.Minutes, rehearsal.Steps.Sum(step => step.Hands.Minutes), 1e-9);
    }, iter: Bakes);

    [Fact]
    public void ConstantProfile_IsConstantAir() => Gen.Select(Bake.Any, Gen.Double[10, 30], Gen.Double[20, 600]).Sample((bake, air, knot) =>
    {
        var celsius = Bake.Celsius(air);
        var constant = In(bake, bake.Recipe.Home with { Air = AirProfile.Constant(celsius) });
        var twice = In(bake, bake.Recipe.Home with { Air = AirProfile.Of([(Duration.Zero, celsius), (Duration.FromMinutes(knot), celsius)]) });
        foreach (var (one, two) in constant.Steps.Zip(twice.Steps))
        {
            Assert.Equal(one.Time?.Likely.Minutes ?? -1, two.Time?.Likely.Minutes ?? -1, 1e-6);
            Assert.Equal(one.EndTemperature?.Celsius ?? -99, two.EndTemperature?.Celsius ?? -99, 1e-6);
            Assert.Equal(one.Start?.Minutes ?? -1, two.Start?.Minutes ?? -1, 1e-6);
        }
    }, iter: Bakes / 2);

    /// <summary>
    /// A crumb with water in it gets no hotter than its water boils, at home and elsewhere: bound water boils a little above pure water, half a kelvin at
    /// the most (sheet on the structure of a bake, goals; Oswin's isotherm of bread).
    /// </summary>
    [Fact]
    public void Core_StaysBelowBoiling() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample((bake, kitchen) =>
    {
        foreach (var rehearsal in new[] { In(bake, kitchen), In(bake, bake.Recipe.Home) })
        {
            Assert.True(rehearsal.FindStep("bake")!.EndTemperature!.Value.Celsius < rehearsal.Boils.Celsius + 0.5);
        }
    }, iter: Bakes);

    /// <summary>Reasons whose parts add up, at every depth of every step.</summary>
    [Fact]
    public void AdditiveReasons_AddUp() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample((bake, kitchen) =>
    {
        foreach (var rehearsal in new[] { In(bake, kitchen), In(bake, bake.Recipe.Home) })
        {
            Assert.All(rehearsal.Steps, step => AssertAdds(step.Why()));
        }
    }, iter: Bakes);

    private static void AssertNotSlower(Rehearsal one, Rehearsal other, string step, Bake bake) =>
        Assert.True(Minutes(other, step) <= Minutes(one, step) + Hair, $"{Minutes(one, step)} min, then {Minutes(other, step)} min\n{bake}");

    private static void AssertAdds(Reason reason)
    {
        if (reason.Additive)
        {
            Assert.Equal(reason.Value!.Value, reason.Parts.Sum(part => part.Value!.Value), 1e-9);
        }

        Assert.All(reason.Parts, AssertAdds);
    }

    private static void AssertRange(Estimate<Duration>? range)
    {
        if (range is { } known)
        {
            Assert.True(known.Low <= known.Likely);
            Assert.True(known.High is null || known.Likely <= known.High);
            Assert.True(known.Low >= Duration.Zero);
        }
    }
}
