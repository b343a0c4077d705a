using Doughwright.Engine.Editing;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>Two windows that write one recipe lose nothing of each other, whatever happens meanwhile.</summary>
public sealed class SettlingTests : OnTheSheet
{
    [Fact]
    public void OtherWindow_IsShownBoth_AndTakesWhatIsThere()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(theirs, "60");
        Assert.False(Butter(mine, "70"));
        Assert.Contains("butter: 70 g", mine.Clash!.Mine, StringComparison.Ordinal);
        Assert.Contains("butter: 60 g", mine.Clash.OtherText, StringComparison.Ordinal);
        mine.TakeOther();
        Assert.Null(mine.Clash);
        Assert.Contains("butter: 60 g", mine.File.Text, StringComparison.Ordinal);
        // What was done here can be done again.
        mine.Redo();
        Assert.Contains("butter: 70 g", Text, StringComparison.Ordinal);
    }

    /// <summary>A text that is begun has nothing to do with a clash of the sheet.</summary>
    [Fact]
    public void SettlingAClashOfTheSheet_KeepsTheTextThatIsBegun()
    {
        var (mine, theirs) = (Open(), Open());
        mine.Type(Text + "\nnonsense");
        var begun = mine.Draft!.Text;
        Butter(theirs, "60");
        Butter(mine, "70");
        mine.TakeOther();
        Assert.Equal(begun, mine.Draft!.Text);
    }

    [Fact]
    public void OtherWindow_IsWrittenOver_AndStaysAStepBack()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(theirs, "60");
        Butter(mine, "70");
        mine.TakeMine();
        Assert.Contains("butter: 70 g", Text, StringComparison.Ordinal);
        mine.Undo();
        Assert.Contains("butter: 60 g", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void KeepingBoth_MakesARecipeOfTheOther()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(theirs, "60");
        Butter(mine, "70");
        mine.KeepBoth();
        Assert.Contains("butter: 70 g", Text, StringComparison.Ordinal);
        var grown = Assert.Single(scratch.Folder.RecipeTexts.Papers(), paper => paper.GrownFrom is not null);
        Assert.Contains("butter: 60 g", scratch.Text(grown.Name), StringComparison.Ordinal);
        // By the title that it is found under on the shelf.
        Assert.Contains(RecipeText.Read(scratch.Text(grown.Name)).Recipe!.Title, mine.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void OtherWindowThatWritesOnceMore_IsShown_AndWhatWasTypedStays()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(theirs, "60");
        Butter(mine, "70");
        Butter(theirs, "65");
        mine.TakeOther();
        Assert.Equal(Words.Shipped["write.other-again"], mine.Said);
        Assert.Contains("butter: 70 g", mine.Clash!.Mine, StringComparison.Ordinal);
        Assert.Contains("butter: 65 g", mine.Clash.OtherText, StringComparison.Ordinal);

        Butter(theirs, "66");
        mine.TakeMine();
        Assert.Contains("butter: 70 g", mine.Clash!.Mine, StringComparison.Ordinal);
        Assert.Contains("butter: 66 g", mine.Clash.OtherText, StringComparison.Ordinal);
        Assert.Contains("butter: 66 g", Text, StringComparison.Ordinal);
        mine.TakeMine();
        Assert.Null(mine.Clash);
        Assert.Null(mine.Said);
        Assert.Contains("butter: 70 g", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void ChangeOfTheSheetThatIsToBeSettled_IsFoundAgain_InAWindowThatIsOpenedAnew()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(theirs, "60");
        Butter(mine, "70");
        var again = Open();
        Assert.Contains("butter: 70 g", again.Draft!.Text, StringComparison.Ordinal);
        Assert.Empty(again.DraftFaults);
        again.Type(again.Draft.Text);
        Assert.Contains("butter: 60 g", again.Clash!.OtherText, StringComparison.Ordinal);
        again.TakeMine();
        Assert.Contains("butter: 70 g", Text, StringComparison.Ordinal);
        Assert.Null(Open().Draft);
    }

    [Fact]
    public void WindowThatLooks_SaysWhatTheOtherDid_AndShowsItWithWhatIsTypedHere()
    {
        var (mine, theirs) = (Open(), Open());
        Assert.False(mine.Look());
        mine.Change("salt", "a lot", recipe => LineEdits.Weigh(recipe, "dough", "salt", "a lot"));
        Butter(theirs, "60");
        Assert.True(mine.Look());
        Assert.Equal(new(false, "butter (Dough) 60\u00a0g"), mine.Elsewhere);
        Assert.False(mine.Look());
        theirs.Undo();
        Assert.True(mine.Look());
        Assert.Null(mine.Elsewhere);

        Butter(theirs, "60");
        mine.Look();
        mine.ShowOther();
        Assert.Null(mine.Elsewhere);
        Assert.Contains("butter: 60 g", mine.File.Text, StringComparison.Ordinal);
        Assert.Equal("a lot", mine.Refused["salt"].Typed);
        scratch.Folder.RecipeTexts.TakeAway(Rolls);
        Assert.True(mine.Look());
        Assert.True(mine.Elsewhere!.IsGone);
        mine.BackOnShelf();
        Assert.Null(mine.Elsewhere);
    }

    [Fact]
    public void WhatIsSettled_IsNotBegunAnyMore()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(theirs, "60");
        Butter(mine, "70");
        mine.TakeOther();
        Assert.Null(Open().Draft);
        Assert.Empty(mine.Refused);
    }

    [Fact]
    public void RecipeTakenOffTheShelf_LosesNothingThatWasTyped()
    {
        var manuscript = Open();
        scratch.Folder.RecipeTexts.TakeAway(Rolls);
        Butter(manuscript, "60");
        Assert.Null(manuscript.Clash!.Other);
        Assert.Contains("butter: 60 g", manuscript.Clash.Mine, StringComparison.Ordinal);
    }

    [Fact]
    public void RecipeTakenOffTheShelf_IsPutBack_WithWhatWasTyped()
    {
        var manuscript = Open();
        scratch.Folder.RecipeTexts.TakeAway(Rolls);
        Butter(manuscript, "60");
        manuscript.BackOnShelf();
        Assert.Null(manuscript.Clash);
        Assert.Contains("butter: 60 g", Text, StringComparison.Ordinal);
        manuscript.Undo();
        Assert.Contains("butter: 50 g", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void RecipeTakenOffTheShelf_AndWrittenBefore_IsSettledWithWhatIsThere()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(theirs, "60");
        scratch.Folder.RecipeTexts.TakeAway(Rolls);
        Butter(mine, "70");
        Assert.Null(mine.Clash!.Other);
        mine.BackOnShelf();
        Assert.Contains("butter: 60 g", mine.Clash!.OtherText, StringComparison.Ordinal);
        Assert.Contains("butter: 70 g", mine.Clash.Mine, StringComparison.Ordinal);
        Assert.NotNull(mine.Clash.Other);
    }

    [Fact]
    public void WhatWasTypedForARecipeThatIsGone_BecomesARecipeOfItsOwn()
    {
        var manuscript = Open();
        scratch.Folder.RecipeTexts.TakeAway(Rolls);
        Butter(manuscript, "60");
        var name = manuscript.OnItsOwn()!;
        Assert.NotEqual(Rolls, name);
        Assert.Contains("butter: 60 g", scratch.Text(name), StringComparison.Ordinal);
        Assert.Equal("butter 50\u00a0g to 60\u00a0g", scratch.Folder.RecipeTexts.Find(name)!.Did);
        Assert.Null(manuscript.Clash);
        Assert.True(scratch.Folder.RecipeTexts.CanPutBack(Rolls));
    }

    [Fact]
    public void StepInARecipeThatIsGoneOrWasWritten_SaysWhatToDo()
    {
        var (mine, theirs) = (Open(), Open());
        Butter(mine, "60");
        Butter(theirs, "70");
        theirs.TakeMine();
        mine.Undo();
        Assert.Contains(Rolls, mine.Said, StringComparison.Ordinal);
        Assert.Contains("press the button again", mine.Said, StringComparison.Ordinal);
        Assert.Contains("butter: 70 g", mine.File.Text, StringComparison.Ordinal);
        scratch.Folder.RecipeTexts.TakeAway(Rolls);
        mine.Undo();
        Assert.Contains("Put it back on the shelf", mine.Said, StringComparison.Ordinal);
    }
}
