namespace Doughwright.App.Tests;

public class HouseTests
{
    [Fact]
    public void Placeholder() => Assert.True(true);
}
