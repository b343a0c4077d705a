using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Hosting;

public class MastheadTests
{
    /// <summary>What the shelf leads to belongs to the recipes.</summary>
    [Theory]
    [InlineData("/open")]
    [InlineData("/notes")]
    [InlineData("/notes/scalding")]
    [InlineData("/new")]
    public async Task Masthead_MarksTheRecipes(string address)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(["/"], (await desk.Page(address)).QuerySelectorAll(".mast nav a[aria-current]").Select(link => link.GetAttribute("href")));
    }
}
