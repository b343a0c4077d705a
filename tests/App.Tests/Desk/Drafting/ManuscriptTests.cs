using Doughwright.App.Desk.Drafting;
using Doughwright.Engine.Editing;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>What is taken is in the book at once; what is not stays in its field.</summary>
public sealed class ManuscriptTests : OnTheSheet
{
    [Fact]
    public void Change_IsInTheBookAtOnce_AndSaysWhatItDid()
    {
        var manuscript = Open();
        Assert.True(Butter(manuscript, "60"));
        Assert.Contains("butter: 60 g, soft", Text, StringComparison.Ordinal);
        Assert.Equal("butter 50\u00a0g to 60\u00a0g", scratch.Folder.RecipeTexts.Find(Rolls)!.Undo);
    }

    [Fact]
    public void Undo_BringsBackEveryByte_AndRedoToo_InAnotherWindow()
    {
        var before = Text;
        Butter(Open(), "60");
        Butter(Open(), "70");
        var last = Text;
        Open().Undo();
        Open().Undo();
        Assert.Equal(before, Text);
        Open().Redo();
        Open().Redo();
        Assert.Equal(last, Text);
    }

    [Fact]
    public void RefusedValue_StaysInItsField_AndTheLastGoodOneHolds()
    {
        var (manuscript, before) = (Open(), Text);
        Assert.False(Butter(manuscript, "a lot"));
        Assert.Equal("a lot", manuscript.Refused["butter"].Typed);
        Assert.NotEmpty(Assert.Single(manuscript.Refused["butter"].Reasons));
        Assert.Equal(before, Text);
        Assert.True(Butter(manuscript, "55"));
        Assert.Empty(manuscript.Refused);
    }

    [Fact]
    public void TextThatIsNotUnderstood_OutlivesTheDesk_AndAnotherWindowDoesNotTakeItsPlace()
    {
        var folder = Path.Join(scratch.Data.Root, "drafts");
        var ofThisDesk = new OpenDrafts(folder);
        var mine = Manuscript.Open(Rolls, scratch.Folder, ofThisDesk, Voice)!;
        mine.Type(Text + "\nmine");
        Assert.Equal(mine.Draft, Manuscript.Open(Rolls, scratch.Folder, new OpenDrafts(folder), Voice)!.Draft);

        Manuscript.Open(Rolls, scratch.Folder, ofThisDesk, Voice)!.Type(Text + "\ntheirs");
        Butter(mine, "60");
        Assert.EndsWith("mine", mine.Draft!.Text, StringComparison.Ordinal);
        mine.PutBack();
        Assert.EndsWith("theirs", Manuscript.Open(Rolls, scratch.Folder, new OpenDrafts(folder), Voice)!.Draft!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_KeepsWhatWasTypedAndNotTaken()
    {
        var manuscript = Open();
        Butter(manuscript, "60");
        manuscript.Change("salt", "a lot", recipe => LineEdits.Weigh(recipe, "dough", "salt", "a lot"));
        manuscript.Undo();
        Assert.Equal("a lot", manuscript.Refused["salt"].Typed);
    }

    [Fact]
    public void TextThatIsUnderstood_IsWrittenDown()
    {
        Open().Type(Text.Replace("salt: 7 g", "salt: 8 g   # less is flat"));
        Assert.Contains("salt: 8 g   # less is flat", Text, StringComparison.Ordinal);
        Assert.Equal("text changed: salt: 8 g   # less is flat", scratch.Folder.RecipeTexts.Find(Rolls)!.Undo);
    }

    [Fact]
    public void TextThatIsNotUnderstood_StaysAsItWasTyped_AlsoInAWindowThatIsOpenedAnew()
    {
        var before = Text;
        var typed = before.Replace("salt: 7 g", "salt: 7");
        Open().Type(typed);
        var again = Open();
        Assert.Equal(before, Text);
        Assert.Equal(typed, again.Draft!.Text);
        Assert.Equal("unit-missing", Assert.Single(again.DraftFaults).Kind);
        again.Type(before.Replace("salt: 7 g", "salt: 9 g"));
        Assert.Contains("salt: 9 g", Text, StringComparison.Ordinal);
        Assert.Null(Open().Draft);
    }

    [Fact]
    public void SheetChangedUnderADraft_IsNotWrittenOver()
    {
        var manuscript = Open();
        manuscript.Type(Text.Replace("salt: 7 g", "salt: 7"));
        Butter(manuscript, "60");
        Assert.NotNull(manuscript.Draft);
        manuscript.Type(manuscript.Draft.Text.Replace("salt: 7", "salt: 9 g"));
        Assert.NotNull(manuscript.Clash);
        Assert.Contains("butter: 60 g", Text, StringComparison.Ordinal);
    }
}
