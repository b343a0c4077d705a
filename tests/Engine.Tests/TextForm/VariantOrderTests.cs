using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Another way to mix can have another order in which things go in.</summary>
public class VariantOrderTests
{
    private static Reading Read(string order) => RecipeText.Read($"""
        doughwright: 1
        title: Small
        home:
          air: 21 C
        parts:
          dough:
            strong white flour: 500 g
            water: 300 g
            salt: 9 g
        steps:
          mix:
            of: dough
            order: water, strong white flour, salt
            variants:
              machine:
                way: machine
                order: {order}

        """);

    [Fact]
    public void OrderOfAVariant_IsItsOwn_AndIsWrittenBack()
    {
        var reading = Read("strong white flour, salt, water");
        Assert.Empty(reading.Findings);
        var step = reading.Recipe!.Steps[0];
        Assert.Equal(["water", "strong-white-flour", "salt"], step.Order);
        Assert.Equal(["strong-white-flour", "salt", "water"], step.Variants[0].Step.Order);
        var again = RecipeText.Read(RecipeText.Write(reading.Recipe)).Recipe!;
        Assert.Equal(step.Variants[0].Step.Order, again.Steps[0].Variants[0].Step.Order);
        Assert.Equal(step.Order, again.Steps[0].Order);
    }

    [Fact]
    public void OrderThatIsTheSteps_IsNotWrittenTwice() =>
        Assert.Single(RecipeText.Write(Read("water, strong white flour, salt").Recipe!).Split('\n'), line => line.Contains("order:", StringComparison.Ordinal));

    [Theory]
    [InlineData("water, salt", "order-leaves-out")]
    [InlineData("water, salt, flour", "order-unknown-line,order-leaves-out")]
    [InlineData("water, strong white flour, salt, salt", "order-twice")]
    public void Slip_IsToldAtTheVariant(string order, string kinds)
    {
        var findings = Read(order).Findings;
        Assert.Equal(kinds.Split(',').Order(), findings.Select(finding => finding.Kind).Order());
        Assert.All(findings, finding => Assert.Equal("steps.mix.variants.machine.order", finding.Place));
    }
}
