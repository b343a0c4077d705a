using System.Net;
using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>Who asks only for the head of an answer gets that of the whole.</summary>
public class HeadTests
{
    [Fact]
    public async Task EveryPage_AnswersHeadAsGet()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var address in EveryAddress.All().Concat(["/recipes/potato-rolls/page/file", "/book/export", "/nothing-here", "/desk.js"]))
        {
            using var got = await desk.Begin(address);
            using var head = await desk.Head(address);
            Assert.Equal((address, got.StatusCode), (address, head.StatusCode));
            Assert.Equal(got.Content.Headers.ContentType?.MediaType, head.Content.Headers.ContentType?.MediaType);
            Assert.Empty(await head.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        }
    }

    [Fact]
    public async Task RecipeTakenOff_LeadsToWhereItIsPutBack()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.True(scratch.Folder.RecipeTexts.TakeAway("potato-rolls"));
        using var head = await desk.Head("/recipes/potato-rolls");
        Assert.Equal(HttpStatusCode.Redirect, head.StatusCode);
    }
}
