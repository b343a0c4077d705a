namespace Doughwright.Engine.Tests;

public class HouseTests
{
    [Fact]
    public void Placeholder() => Assert.True(true);
}
