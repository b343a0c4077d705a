using System.Net;
using System.Text.Json.Nodes;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.States;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Commands;

/// <summary>Photos that a recipe names, in the JSON of its commands and among the differences of two states.</summary>
public sealed class PhotosToldTests : KeptRolls
{
    private const string Crumb = "1f9c03ab77e2d4c1";
    private const string Crust = "00112233445566778899aabbccddeeff";

    private string File => Scratch.Folder.RecipeTexts.FileOf("potato-rolls");

    private void Lay(string words = "the crumb, cut") => Scratch.Put("potato-rolls", Scratch.Text("potato-rolls")
        .Replace("title: Potato rolls\n", $"title: Potato rolls\nphoto: {Crumb}, {words}\n", StringComparison.Ordinal)
        .Replace("    cue: golden all over\n", $"    cue: golden all over\n    photo: {Crust}, the crust\n", StringComparison.Ordinal));

    private static string Told(params string[] words)
    {
        var run = Run.Of(words);
        Assert.Equal((0, ""), (run.ExitCode, run.Messages));
        return run.Output.Replace('\u00a0', ' ');
    }

    [Theory]
    [InlineData("formula")]
    [InlineData("rehearse")]
    public void RecipeAsJson_NamesItsPhotos_ThoseOfTheWholeFirst(string command)
    {
        Assert.Empty(JsonNode.Parse(Told(command, File, "--json"))!["photos"]!.AsArray());
        Lay();
        Assert.Equal(
            [(Crumb, (string?)null, "the crumb, cut"), (Crust, "bake", "the crust")],
            JsonNode.Parse(Told(command, File, "--json"))!["photos"]!.AsArray().Select(one => ((string)one!["photo"]!, (string?)one["step"], (string)one["words"]!)));
    }

    [Fact]
    public void PhotosLaidIn_AreDifferences_InWordsAndAsJson()
    {
        var first = Now;
        Lay();
        var told = Told("compare", $"{File}@{first}", File);
        Assert.Matches("Photo “the crumb, cut” +– +shown +added", told);
        Assert.Matches("Bake: photo “the crust” +– +shown +added", told);
        Assert.Matches("Photo “the crumb, cut” +shown +– +taken out", Told("compare", File, $"{File}@{first}"));
        Assert.Equal(
            [("photo", "bake", Crust), ("photo", null, Crumb)],
            JsonNode.Parse(Told("compare", $"{File}@{first}", File, "--json"))!["differences"]!.AsArray().Select(one => ((string)one!["aspect"]!, (string?)one["step"], (string?)one["item"])));
    }

    [Fact]
    public void OtherWordsForAPhoto_StandOnBothSides()
    {
        Lay("the crumb");
        var first = Now;
        Scratch.Put("potato-rolls", Scratch.Text("potato-rolls").Replace("the crumb", "the crumb, cut", StringComparison.Ordinal));
        Assert.Matches("Photo “the crumb, cut” +the crumb +the crumb, cut +other", Told("compare", $"{File}@{first}", File));
    }

    [Fact]
    public async Task OnThePage_EachStandsInARow_AndIsBroughtBackAlone()
    {
        Lay();
        var first = Now;
        Scratch.Put("potato-rolls", Scratch.Text("potato-rolls").Replace($"photo: {Crumb}, the crumb, cut\n", "", StringComparison.Ordinal).Replace($"    photo: {Crust}, the crust\n", "", StringComparison.Ordinal));
        var page = await Desk.Page($"{Sides}?left={first}");
        Assert.Equal(["Bake: photo “the crust”", "Photo “the crumb, cut”"], page.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));
        Assert.All(page.QuerySelectorAll(".changes2 td.d"), cell => Assert.Equal("taken out", cell.TextContent));
        var button = (IHtmlButtonElement)page.QuerySelectorAll(".bring button").Single(one => one.TextContent.Contains("the crumb", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.SeeOther, (await Desk.Send(Form(page, "take"), ("take", button.Value))).Status);
        var now = RecipeText.Read(Scratch.Text("potato-rolls")).Recipe!;
        Assert.Equal((Crumb, "the crumb, cut"), (Assert.Single(now.Photos).Name, now.Photos[0].Words));
        Assert.Empty(now.FindStep("bake")!.Photos);
    }
}
