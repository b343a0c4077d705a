using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Notes as text: a title, paragraphs, pictures, and everything that is wrong at once.</summary>
public class NoteTextTests
{
    [Fact]
    public void TitleParagraphsAndPictures_ComeInTheOrderOfTheText()
    {
        var reading = NoteText.Read("\n# Scalding\n\nOne line\nand its second.\n\n[Picture:  rise ]\n\n[picture of mine] stays.\n");
        Assert.Empty(reading.Findings);
        Assert.Equal("Scalding", reading.Note!.Title);
        Assert.Equal([new NoteBlock.Words("One line and its second."), new NoteBlock.Picture(NotePicture.Rise), new NoteBlock.Words("[picture of mine] stays.")], reading.Note.Blocks);
    }

    [Fact]
    public void EveryFault_IsToldAtOnce_WithItsLine()
    {
        var reading = NoteText.Read("No title here.\n\n# Within\n\n[picture: cake]\n\n" + string.Concat(Enumerable.Repeat("[picture: heat]\n\n", NoteText.MostPictures + 1)));
        Assert.Equal(
            [("note-title-missing", 1), ("note-heading-within", 3), ("note-picture-unknown", 5), ("note-pictures-many", 7 + (2 * NoteText.MostPictures))],
            reading.Findings.Select(finding => (finding.Kind, finding.Position.Line)));
        Assert.Equal(NoteText.MostPictures, reading.Note!.Blocks.OfType<NoteBlock.Picture>().Count());
    }

    [Theory]
    [InlineData("", "note-empty")]
    [InlineData("# Only a title\n", "note-empty")]
    [InlineData("#\n\nwords", "note-title-missing")]
    [InlineData("#4 is no title", "note-title-missing")]
    public void WhatIsMissing_IsTold(string text, string kind) => Assert.Equal(kind, Assert.Single(NoteText.Read(text).Findings).Kind);

    [Fact]
    public void TooMuch_IsRefused_AndNotLookedAtLineByLine()
    {
        var reading = NoteText.Read("# T\n\n" + new string('a', NoteText.Characters));
        Assert.Null(reading.Note);
        Assert.Equal("note-too-long", Assert.Single(reading.Findings).Kind);
        var title = NoteText.Read("# " + new string('t', NoteText.LongestTitle + 1) + "\n\nx");
        Assert.Equal((NoteText.LongestTitle, "note-title-long"), (title.Note!.Title.Length, Assert.Single(title.Findings).Kind));
    }

    /// <summary>Signs that nobody sees and that turn what stands beside them are told, and do not come through.</summary>
    [Fact]
    public void HiddenSigns_AreToldAndReplaced()
    {
        var reading = NoteText.Read("# A\u202eB\n\nc\u0007d\n");
        Assert.Equal(["direction-mark", "control-character"], reading.Findings.Select(finding => finding.Kind));
        Assert.Equal("A\ufffdB", reading.Note!.Title);
        Assert.Equal(new NoteBlock.Words("c\ufffdd"), Assert.Single(reading.Note.Blocks));
    }

    [Fact]
    public void ShippedNotes_AreSound() => Assert.All(
        Directory.EnumerateFiles(Path.Combine(Texts.Root, "demo", "notes"), "*.md"),
        file => Assert.Empty(NoteText.Read(File.ReadAllText(file)).Findings));

    [Fact]
    public void BegunNote_HasItsTitle_AndSaysThatItIsEmpty()
    {
        var reading = NoteText.Read(NoteText.Begin("Reading a proof"));
        Assert.Equal(("Reading a proof", "note-empty"), (reading.Note!.Title, Assert.Single(reading.Findings).Kind));
    }
}
