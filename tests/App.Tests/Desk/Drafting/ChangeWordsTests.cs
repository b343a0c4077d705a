using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Opening;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>A button that steps back says what comes back.</summary>
public sealed class ChangeWordsTests : IDisposable
{
    private readonly Scratch scratch = Scratch.WithTheShipped();

    private static Voice Voice => new(Words.Shipped, Doughwright.Engine.Quantities.MeasureSystem.Metric);

    public void Dispose() => scratch.Dispose();

    private Manuscript Open() => Manuscript.Open("potato-rolls", scratch.Folder, new(), Voice)!;

    private string Back(Func<Recipe, EditAnswer> change)
    {
        var manuscript = Open();
        Assert.True(manuscript.Change("field", "", change));
        var said = manuscript.Worked.Back!.Replace('\u00a0', ' ');
        // A window that is opened anew reads the state before from the book, and says the same.
        Assert.Equal(said, Open().Worked.Back!.Replace('\u00a0', ' '));
        return said;
    }

    [Fact]
    public void RecipeThatWasNeverChanged_HasNothingToBringBack() => Assert.Null(Open().Worked.Back);

    [Fact]
    public void Weight_ComesBack() => Assert.Equal("butter (Dough) back to 50 g", Back(recipe => LineEdits.Weigh(recipe, "dough", "butter", "60")));

    [Fact]
    public void Flour_IsNamedAlone_ThoughEveryShareOfItMoves() =>
        Assert.Equal("strong white flour (Dough) back to 320 g", Back(recipe => LineEdits.Weigh(recipe, "dough", "strong-white-flour", "340")));

    [Fact]
    public void LineThatWasTakenOut_ComesBackWithItsWeight() => Assert.Equal("butter (Dough) comes back, 50 g", Back(recipe => LineEdits.TakeOut(recipe, "dough", "butter")));

    [Fact]
    public void PhotoThatWasLaid_GoesOut() => Assert.Equal("photo “the crumb, cut” goes out", Back(recipe => PhotoEdits.Lay(recipe, null, "1f9c03ab77e2d4c1", "the crumb, cut")));

    [Fact]
    public void PhotoOfAStep_GoesOut_WithItsStep() => Assert.Equal("bulk: photo “the dough, risen” goes out", Back(recipe => PhotoEdits.Lay(recipe, "bulk", "1f9c03ab77e2d4c1", "the dough, risen")));

    [Fact]
    public void LineThatWasAdded_GoesOut() => Assert.Equal("poppy seed (Dough) goes out", Back(recipe => LineEdits.Add(recipe, "dough", "poppy seed 12 g")));

    [Fact]
    public void StepThatWasTakenOut_ComesBack() => Assert.StartsWith("bulk comes back", Back(recipe => StepEdits.TakeOut(recipe, "bulk")), StringComparison.Ordinal);

    [Fact]
    public void PlaceOfAStep_ComesBack_InWords() => Assert.Equal("bulk: place back to in the room", Back(recipe => StepEdits.Say(recipe, "bulk", "where", "fridge")));

    [Fact]
    public void OrderAndProse_AreAsBefore()
    {
        Assert.Equal("dough: order of lines as before", Back(recipe => LineEdits.Move(recipe, "dough", "butter", -1)));
        Assert.Equal("bulk: words for the reader as before", Back(recipe => StepEdits.Say(recipe, "bulk", "words", "Cover it.")));
    }

    [Fact]
    public void TextThatMeansTheSame_ComesBackByItsLine()
    {
        var manuscript = Open();
        manuscript.Type(manuscript.File.Text.Replace("salt: 7 g", "salt: 7 g   # less is flat", StringComparison.Ordinal));
        Assert.Equal("back to “salt: 7 g”", manuscript.Worked.Back);
    }

    [Fact]
    public void WhatAnotherWindowDid_IsSaidAsItIsNow()
    {
        var (before, theirs) = (Open(), Open());
        theirs.Change("field", "", recipe => LineEdits.Weigh(recipe, "dough", "butter", "60"));
        Assert.Equal("butter (Dough) 60\u00a0g", ChangeWords.Now(new("", before.File.Formula), new("", theirs.File.Formula), Voice));
        theirs.Undo();
        Assert.Equal("", ChangeWords.Now(new("", before.File.Formula), new("", theirs.File.Formula), Voice));
    }

    [Theory]
    [InlineData("a\nb", "a\nc", "back to “c”")]
    [InlineData("a\nb", "a", "“b” goes out")]
    [InlineData("a", "a\r\n  b", "back to “b”")]
    [InlineData("a\nb\nc", "a\nd\ne", "back to the text before, in 2 lines")]
    [InlineData("a\nb", "b\na", "back to the text before; its lines stand otherwise")]
    public void LinesThatComeBack_AreSaid(string now, string then, string said) => Assert.Equal(said, BackWords.Lines(now, then, Voice));

    /// <summary>A spoilt state is no reason not to write on.</summary>
    [Fact]
    public void StateBeforeThatCannotBeRead_IsCalledByWhatWasDoneSince()
    {
        var manuscript = Open();
        manuscript.Change("field", "", recipe => LineEdits.Weigh(recipe, "dough", "butter", "60"));
        Assert.Equal(
            "back to before: butter 50\u00a0g to 60\u00a0g",
            BackWords.Said(() => throw new BookException(BookTrouble.Damaged, "book.db", "text"), manuscript.File.Paper, Voice));
    }
}
