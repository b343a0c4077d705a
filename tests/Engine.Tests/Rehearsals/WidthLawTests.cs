using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>How many lanes a machine works on at once shows nowhere in a rehearsal.</summary>
public class WidthLawTests
{
    [Fact]
    public void Rehearsal_AtEveryWidth_HasTheSameDigits() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample(
        (bake, kitchen) =>
        {
            string At(int width) => Lanes.AtWidth(
                width, () => Picture.Of(Rehearser.Rehearse(bake.Recipe, Larder.Shipped, new() { Kitchen = kitchen })));
            var alone = At(1);
            Assert.All((int[])[2, 4, 8], width => Assert.Equal(alone, At(width)));
        },
        iter: 10);

    [Fact]
    public void Width_AfterTheWork_IsTheMachinesAgain()
    {
        var machines = Lanes.Widest;
        Assert.Equal(1, Lanes.AtWidth(1, () => Lanes.Widest));
        Assert.Throws<InvalidOperationException>(() => Lanes.AtWidth<int>(2, () => throw new InvalidOperationException()));
        Assert.Equal(machines, Lanes.Widest);
    }
}
