using System.Net;
using System.Text;
using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.App.Tests.Desk.Kitchens;

/// <summary>A kitchen is made and changed on a form with all that its text can say.</summary>
public sealed class KitchenFormTests : IDisposable
{
    private static readonly (string, string)[] Boathouse =
    [
        ("kitchen", "Boathouse"), ("air", "17 C, 21 C after 9 h"), ("altitude", "40"), ("tap", "9"), ("oven", "static"), ("oven-runs", "10 C hotter"), ("oven-heats-in", "25"), ("oven-steam", "built in"),
        ("hearth", "stone, 15 mm"), ("trays", "1"), ("scale", "0.5"), ("vessels", "the big bowl: steel bowl, 750 g, 6 l\r\naunt's tin: aluminium tin, 300 g"),
    ];

    private readonly Scratch scratch = Scratch.WithTheShipped();

    [Fact]
    public async Task Kitchen_IsMadeWithAllItsFields_AndToldWithThem()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await desk.Send((IHtmlFormElement)(await desk.Page("/kitchens/new")).QuerySelector("form.paperform")!, Boathouse);
        Assert.Equal((HttpStatusCode.SeeOther, "/kitchens"), (answer.Status, answer.Location));
        var kitchen = ShelfKitchen.Find(scratch.Folder, "boathouse")!.Kitchen!;
        Assert.Equal((2, 40.0, 9.0, OvenMode.Static, 10.0), (kitchen.Air.Knots.Count, kitchen.Altitude.Metres, kitchen.Tap.Celsius, kitchen.Oven, kitchen.OvenTraits.OffDial!.Value.Kelvins));
        Assert.Equal((OvenSteam.BuiltIn, HearthMaterial.Stone, 1, 0.5, Duration.FromMinutes(25)), (kitchen.OvenTraits.Steam, kitchen.OvenTraits.Hearth!.Material, kitchen.Trays, kitchen.Scale.Grams, kitchen.OvenTraits.HeatsIn!.Value));
        Assert.Equal(["the big bowl", "aunt's tin"], kitchen.Vessels.Select(vessel => vessel.Name!));
        Assert.Contains("the big bowl and aunt's tin", (await desk.Page("/kitchens")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task EveryKitchenThatComesWithTheProgram_IsFilledIn_AndWrittenAgainAsItWas()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var name in scratch.Folder.Kitchens)
        {
            var before = scratch.Folder.KitchenTexts.Find(name)!;
            var form = (IHtmlFormElement)(await desk.Page($"/kitchens/{name}/change")).QuerySelector("form.paperform")!;
            Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(form, Filled(form))).Status);
            Assert.Equal(before, scratch.Folder.KitchenTexts.Find(name));
        }
    }

    [Fact]
    public async Task Change_IsAState_WithItsComments_AndUndone()
    {
        scratch.PutKitchen("mine", "doughwright: 1\nkitchen: Mine\n# measured in June\nair: 70 F\n");
        await using var desk = await LiveDesk.On(scratch.Data);
        var form = (IHtmlFormElement)(await desk.Page("/kitchens/mine/change")).QuerySelector("form.paperform")!;
        var fields = Filled(form).Select(field => field.Name == "tap" ? ("tap", "9") : field).ToArray();
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(form, fields)).Status);
        Assert.Equal("doughwright: 1\nkitchen: Mine\n# measured in June\nair: 70 F\ntap: 9 C\n", Encoding.UTF8.GetString(scratch.Folder.Kitchen("mine")!));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(form, [.. fields[..^1], ("fridge", "4")])).Status);
        var page = await desk.Page("/kitchens/mine/change");
        Assert.Equal("/kitchens/mine/change", (await desk.Send((IHtmlFormElement)page.QuerySelector("form.stepping")!, ("step", "back"))).Location);
        Assert.DoesNotContain("tap", Encoding.UTF8.GetString(scratch.Folder.Kitchen("mine")!), StringComparison.Ordinal);
        Assert.Equal(2, scratch.Folder.Book.Papers.States(PaperSort.Kitchen, "mine").Count);
    }

    [Fact]
    public async Task KitchenThatWasChangedMeanwhile_SaysEachFieldThatSaysSomethingElse_AndIsTakenWhenItIsSentAgain()
    {
        scratch.PutKitchen("mine", "doughwright: 1\nkitchen: Mine\nair: 21 C\n");
        await using var desk = await LiveDesk.On(scratch.Data);
        var form = (IHtmlFormElement)(await desk.Page("/kitchens/mine/change")).QuerySelector("form.paperform")!;
        scratch.PutKitchen("mine", "doughwright: 1\nkitchen: Mine\nair: 21 C\ntap: 9 C\n");
        var refused = await desk.Send(form, With(form, ("fridge", "4")));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        var told = refused.Page.GetElementById("kitchen-refused")!.TextContent;
        Assert.Contains("“Mine” was changed meanwhile", told, StringComparison.Ordinal);
        Assert.Contains("as it is there: 9 C", told, StringComparison.Ordinal);
        Assert.Contains("Here: 4 C", told, StringComparison.Ordinal);
        Assert.DoesNotContain("21 C", told, StringComparison.Ordinal);
        Assert.DoesNotContain("fridge", Encoding.UTF8.GetString(scratch.Folder.Kitchen("mine")!), StringComparison.Ordinal);

        var again = (IHtmlFormElement)refused.Page.QuerySelector("form.paperform")!;
        Assert.Equal("4", ((IHtmlInputElement)again.QuerySelector("#fridge")!).Value);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(again, With(again, ("tap", "9")))).Status);
        Assert.Equal("doughwright: 1\nkitchen: Mine\nair: 21 C\ntap: 9 C\nfridge: 4 C\n", Encoding.UTF8.GetString(scratch.Folder.Kitchen("mine")!));
    }

    [Fact]
    public async Task EveryRefusedField_SaysSoInItsPlace()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await desk.Send(
            (IHtmlFormElement)(await desk.Page("/kitchens/new")).QuerySelector("form.paperform")!,
            ("kitchen", "Ropewalk, summer term"), ("air", ""), ("altitude", "high"), ("oven-runs", "hot"), ("hearth", "wood"), ("trays", "many"), ("vessels", "steel bowl: glass bowl\nno colon"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        foreach (var field in new[] { "kitchen", "air", "altitude", "oven-runs", "hearth", "trays", "vessels" })
        {
            Assert.NotEmpty(answer.Page.GetElementById(field + "-why")!.TextContent.Trim());
        }

        Assert.Equal("steel bowl: glass bowl\nno colon", ((IHtmlTextAreaElement)answer.Page.GetElementById("vessels")!).Value.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task BareNumber_IsInTheMeasuresOfThePage()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        await desk.Send((IHtmlFormElement)(await desk.Page("/kitchens/new?measures=us")).QuerySelector("form.paperform")!, ("kitchen", "Aunt"), ("air", "70"), ("altitude", "400"));
        var text = Encoding.UTF8.GetString(scratch.Folder.Kitchen("aunt")!);
        Assert.Contains("air: 70 F\naltitude: 400 ft\n", text, StringComparison.Ordinal);
    }

    public void Dispose() => scratch.Dispose();

    /// <summary>What stands in a form, with one field typed.</summary>
    private static (string, string)[] With(IHtmlFormElement form, (string Name, string Value) typed) =>
        [.. Filled(form).Select(field => field.Name == typed.Name ? typed : field)];

    /// <summary>Everything that stands in a form.</summary>
    private static (string Name, string Value)[] Filled(IHtmlFormElement form) =>
    [
        .. form.QuerySelectorAll("input[type=text], select, textarea").Select(field => field switch
        {
            IHtmlInputElement input => (input.Name!, input.Value),
            IHtmlSelectElement select => (select.Name!, select.Value ?? ""),
            IHtmlTextAreaElement area => (area.Name!, area.Value),
            _ => throw new InvalidOperationException("No such field."),
        }),
    ];
}
