using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>A finding is accepted with a reason where it stands on the sheet: in the words, and kept in the text, as from the recipe's page.</summary>
public sealed class AcceptOnTheSheetTests() : OnADesk(Scratch.WithTheShipped().Put("slipped-rolls", File.ReadAllText(House.PathTo("tests", "data", "pages", "slipped-rolls.yaml"))))
{
    private const string Field = "field";
    private const string Rolls = "slipped-rolls";

    private static Voice Voice => new(Words.Shipped, MeasureSystem.Metric);

    private Manuscript Open(string recipe = Rolls) => Manuscript.Open(recipe, Scratch.Folder, new OpenDrafts(), Voice)!;

    [Fact]
    public void Finding_IsAcceptedWithAReason_KeptInTheText_AndTakenBackWhole()
    {
        var sheet = Open();
        var before = sheet.File.Text;
        var finding = sheet.Worked.Acceptable[0];
        Assert.True(sheet.Accept(Field, finding.Id, "  the  shop calls it so "));
        Assert.DoesNotContain(sheet.Worked.Findings, one => one.Id == finding.Id);
        var accepted = RecipeText.Read(Scratch.Text(Rolls)).Recipe!.Accepted[^1];
        Assert.Equal((finding.Id, "the shop calls it so"), (accepted.FindingId, accepted.Reason));
        Assert.Equal((finding.Id, "the shop calls it so"), (sheet.Worked.Accepted[0].Finding.Id, sheet.Worked.Accepted[0].Reason));
        Assert.Equal(Voice.Say("mend.accepted", ("finding", FindingWords.Message(finding, Voice))), Scratch.Folder.RecipeTexts.Find(Rolls)!.Undo);
        sheet.Undo();
        Assert.Equal(before, Scratch.Text(Rolls));
    }

    /// <summary>The text is the one that the same reason gives on the command line.</summary>
    [Fact]
    public void Text_IsTheCommandLines()
    {
        var sheet = Open();
        var finding = sheet.Worked.Acceptable[0];
        var command = Run.Of("findings", Scratch.Folder.RecipeTexts.FileOf(Rolls), "--accept", $"{finding.Id}=it is so");
        Assert.True(sheet.Accept(Field, finding.Id, "it is so"));
        Assert.Equal(command.Output, Scratch.Text(Rolls));
    }

    [Fact]
    public void WhatIsAccepted_IsAcceptedNoLonger()
    {
        var sheet = Open();
        var finding = sheet.Worked.Acceptable[0];
        Assert.True(sheet.Accept(Field, finding.Id, "it is so"));
        Assert.True(sheet.Stop(finding.Id));
        Assert.Contains(sheet.Worked.Findings, one => one.Id == finding.Id);
        Assert.DoesNotContain(RecipeText.Read(Scratch.Text(Rolls)).Recipe!.Accepted, one => one.FindingId == finding.Id);
        Assert.False(sheet.Stop(finding.Id));
        Assert.NotNull(sheet.Said);
    }

    [Theory]
    [InlineData("", "no reason")]
    [InlineData("   ", "no reason")]
    [InlineData("a\u202eb", "cannot be seen")]
    [InlineData(null, "up to 200")]
    public void ReasonThatIsNone_StaysInItsField_AndNothingIsWritten(string? typed, string said)
    {
        var sheet = Open();
        var reason = typed ?? new string('a', 201);
        var before = sheet.File.Text;
        Assert.False(sheet.Accept(Field, sheet.Worked.Acceptable[0].Id, reason));
        Assert.Equal(reason, sheet.Refused[Field].Typed);
        Assert.Contains(said, Assert.Single(sheet.Refused[Field].Reasons), StringComparison.Ordinal);
        Assert.Equal(before, Scratch.Text(Rolls));
        Assert.True(sheet.Accept(Field, sheet.Worked.Acceptable[0].Id, "it is so"));
        Assert.Empty(sheet.Refused);
    }

    /// <summary>What concerns safety, and what is wrong, is not offered, and cannot be sent either.</summary>
    [Fact]
    public void WhatCannotBeAccepted_IsNot()
    {
        var tried = 0;
        foreach (var name in Scratch.Folder.RecipeTexts.Names())
        {
            var sheet = Open(name);
            var before = sheet.File.Text;
            foreach (var finding in sheet.Worked.Findings.Where(finding => Acceptances.Refusal(finding) is not null))
            {
                Assert.False(sheet.Accept(Field, finding.Id, "it is so"));
                Assert.NotNull(sheet.Said);
                tried++;
            }

            Assert.Equal(before, Scratch.Text(name));
        }

        Assert.True(tried > 0);
    }

    [Fact]
    public void WrittenElsewhereMeanwhile_IsAskedAbout_AndNotWrittenOver()
    {
        var sheet = Open();
        var id = sheet.Worked.Acceptable[0].Id;
        Scratch.Put(Rolls, sheet.File.Text + "# another hand\n");
        Assert.False(sheet.Accept(Field, id, "it is so"));
        Assert.NotNull(sheet.Clash);
        Assert.EndsWith("# another hand\n", Scratch.Text(Rolls), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_HasTheRecipePagesWords_AFieldWithItsName_AndWhatIsAccepted()
    {
        var page = await Desk.Page($"/recipes/{Rolls}/write");
        var part = page.QuerySelector(".place-find .accept")!;
        Assert.StartsWith("Accept it with a reason", part.QuerySelector("summary")!.TextContent, StringComparison.Ordinal);
        var field = (IHtmlInputElement)part.QuerySelector("input[type=text]")!;
        Assert.Equal("Why it is right as it is", part.QuerySelector($"label[for='{field.Id}']")!.TextContent);
        Assert.Equal("Accept it", part.QuerySelector("button")!.TextContent);
        Assert.Equal(Open().Worked.Acceptable.Count, page.QuerySelectorAll(".place-find .accept").Length);
        Assert.Null(page.QuerySelector("#write-accepted"));
        var sheet = Open();
        Assert.True(sheet.Accept(Field, sheet.Worked.Acceptable[0].Id, "the shop <b>calls</b> it so"));
        var after = (await Desk.Page($"/recipes/{Rolls}/write")).QuerySelector("[aria-labelledby=write-accepted]")!;
        Assert.Contains("the shop <b>calls</b> it so", after.TextContent, StringComparison.Ordinal);
        Assert.Contains("Accept it no longer", after.QuerySelector("button")!.TextContent, StringComparison.Ordinal);
    }
}
