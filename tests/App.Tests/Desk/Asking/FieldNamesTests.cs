using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Files;
using Doughwright.App.Desk.Places;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Asking;

/// <summary>Nobody types options into a page, so no page names one when it refuses a value.</summary>
public class FieldNamesTests
{
    /// <summary>Every name that the address of a page may hold.</summary>
    private static readonly string[] Names = [.. Question.Known.Concat(PlaceAsk.Own).Concat(PictureAddress.Own).Distinct()];

    [Fact]
    public void EveryNameOfAnAddress_HasWords() => Assert.All(Names, name => Assert.NotNull(Words.Shipped.Find(FieldNames.KeyOf(name))));

    [Theory]
    [InlineData("", "")]
    [InlineData("/place", "to=26C")]
    [InlineData("/ready", "start=22:00&by=7:00")]
    [InlineData("/page", "")]
    [InlineData("/kitchens", "second=mountain")]
    [InlineData("/size", "pieces=24")]
    public async Task RefusedValue_NamesItsField(string page, string asked)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var refused = 0;
        foreach (var name in Names)
        {
            var query = string.Join('&', asked.Split('&').Where(pair => !pair.StartsWith(name + "=", StringComparison.Ordinal)).Append(name + "=zzz"));
            var main = (await desk.Page($"/recipes/potato-rolls{page}?{query}")).QuerySelector("main")!;
            var said = string.Join(' ', main.QuerySelectorAll(".refusals, .refusal").Select(part => part.TextContent));
            refused += said.Contains("zzz", StringComparison.Ordinal) ? 1 : 0;
            Assert.DoesNotContain("--", said, StringComparison.Ordinal);
        }

        Assert.NotEqual(0, refused);
    }

    [Fact]
    public async Task TargetWithoutANumber_IsToldByItsField()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var said = (await desk.Page("/recipes/potato-rolls/place?to=zzz")).QuerySelector("#place-refused")!.TextContent;
        Assert.Contains("Temperature of the warm place: “zzz” has no number", said, StringComparison.Ordinal);
    }
}
