using System.Net;
using System.Text;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Tests.Desk.Hosting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;
using SkiaSharp;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>A photo that is laid in is shown on the sheet, on the recipe's page and within the page for readers, and is given under its hash alone.</summary>
public sealed class PhotoDeskTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private const string Rolls = "potato-rolls";
    private const string Seen = "the crumb, \"cut\" <open>";

    private static Voice Voice => new(Words.Shipped, MeasureSystem.Metric);

    private ShelfFolder Shelf => Shelves.At(new(desk.Folder));

    private static byte[] Picture(SKColor colour)
    {
        using var bitmap = new SKBitmap(60, 40);
        bitmap.Erase(colour);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private async Task<(bool Done, Manuscript Sheet)> Lay(byte[] bytes, string? step, string words = Seen)
    {
        var manuscript = Manuscript.Open(Rolls, Shelf, new OpenDrafts(), Voice)!;
        return (await new PhotoLaying(manuscript, Shelf, Voice).Lay("photo", step, bytes, words), manuscript);
    }

    private Task<string> Page(string address) => desk.Client.GetStringAsync(address, TestContext.Current.CancellationToken);

    [Fact]
    public async Task Photo_IsShownEverywhere_AndGivenUnderItsHash()
    {
        var (done, sheet) = await Lay(Picture(SKColors.Sienna), "bulk");
        Assert.True(done);
        var photo = Assert.Single(RecipeText.Read(Encoding.UTF8.GetString(Shelf.Recipe(Rolls)!)).Recipe!.FindStep("bulk")!.Photos);
        Assert.Equal(Seen, photo.Words);

        using var given = await desk.Client.GetAsync($"/photos/{photo.Name}", TestContext.Current.CancellationToken);
        Assert.Equal("image/jpeg", given.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", given.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Contains("default-src 'self'", given.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.Contains("immutable", given.Headers.CacheControl!.ToString(), StringComparison.Ordinal);

        var recipe = await Page($"/recipes/{Rolls}");
        Assert.Contains($"src=\"/photos/{photo.Name}\"", recipe, StringComparison.Ordinal);
        Assert.Contains("alt=\"the crumb, &quot;cut&quot; &lt;open&gt;\"", recipe, StringComparison.Ordinal);

        var reader = await Page($"/recipes/{Rolls}/page/file");
        Assert.Contains("src=\"data:image/jpeg;base64,", reader, StringComparison.Ordinal);
        Assert.Contains("img-src data:", reader, StringComparison.Ordinal);
        Assert.DoesNotContain("/photos/", reader, StringComparison.Ordinal);

        // The same bytes from the command line, which names the text in the book; a text outside it says where the photo is.
        var folder = Directory.CreateTempSubdirectory("page-").FullName;
        Assert.Equal(0, Run.Of("page", Shelf.RecipeTexts.FileOf(Rolls), "--out", folder).ExitCode & ~1);
        Assert.Equal(reader, await File.ReadAllTextAsync(Assert.Single(Directory.GetFiles(folder)), TestContext.Current.CancellationToken));
        var alone = Path.Join(folder, "alone.yaml");
        await File.WriteAllBytesAsync(alone, Shelf.Recipe(Rolls)!, TestContext.Current.CancellationToken);
        var outside = Directory.CreateDirectory(Path.Join(folder, "outside")).FullName;
        Run.Of("page", alone, "--out", outside);
        var told = await File.ReadAllTextAsync(Assert.Single(Directory.GetFiles(outside)), TestContext.Current.CancellationToken);
        Assert.Contains("It is in the author’s book.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", told, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);

        sheet.Undo();
        Assert.DoesNotContain("/photos/", await Page($"/recipes/{Rolls}"), StringComparison.Ordinal);
        // An earlier state may name it, so it stays.
        Assert.True(Shelf.Book.Photos.Holds(photo.Name));
    }

    [Fact]
    public async Task WhatIsNoPhoto_IsRefusedBesideItsField_AndNothingIsInTheBook()
    {
        var before = Shelf.Book.Size().Photos;
        var (done, sheet) = await Lay("<svg xmlns='http://www.w3.org/2000/svg'/>"u8.ToArray(), null);
        Assert.False(done);
        Assert.Contains("SVG", Assert.Single(sheet.Refused["photo"].Reasons), StringComparison.Ordinal);
        Assert.Equal(before, Shelf.Book.Size().Photos);
    }

    [Fact]
    public async Task TextWithAPhotoOfAnotherBook_SaysSo()
    {
        var text = Encoding.UTF8.GetString(Shelf.Recipe("tin-loaf")!);
        Shelves.Put(Shelf.RecipeTexts, "far-loaf", text.Insert(text.IndexOf("home:", StringComparison.Ordinal), "photo: 00112233445566ff, the far crust\n"));
        var page = await Page("/recipes/far-loaf");
        Assert.Contains("A photo belongs here: the far crust. It is not in this book.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/photos/0011223344556677")]
    [InlineData("/photos/0")]
    [InlineData("/photos/..%2f..%2fbook.db")]
    public async Task WhatIsNotThere_IsNotGiven(string address)
    {
        using var given = await desk.Client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, given.StatusCode);
    }
}
