using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Book;

/// <summary>What is said beside a text goes by what was shown to whoever says it; and who listens is told of every other state.</summary>
public sealed class SaidTests : IDisposable
{
    private const PaperSort Sort = PaperSort.Recipe;
    private const string Rolls = "rolls";

    private readonly TestBook book = new();
    private readonly AuthorsBook open;

    public SaidTests()
    {
        open = book.Open();
        TestBook.Fill(open, 1);
    }

    public void Dispose()
    {
        open.Dispose();
        book.Dispose();
    }

    private IReadOnlyDictionary<Saying, string>? Said => open.Said.All(Sort).GetValueOrDefault(Rolls);

    [Fact]
    public void SeveralAreSaidAtOnce()
    {
        Assert.Empty(open.Said.Say(Sort, Rolls, [new(Saying.Standing, "", "trying"), new(Saying.Season, "", "autumn")])!);
        Assert.Equal(("trying", "autumn"), (Said![Saying.Standing], Said[Saying.Season]));
    }

    [Fact]
    public void WhereOneWasSaidOtherwiseMeanwhile_NothingIsWritten_AndThatOneIsTold()
    {
        open.Said.Say(Sort, Rolls, Saying.Standing, "trying");
        open.Said.Say(Sort, Rolls, Saying.Season, "spring");
        var meanwhile = open.Said.Say(Sort, Rolls, [new(Saying.Standing, "trying", "right"), new(Saying.Season, "", "autumn")]);
        Assert.Equal([(Saying.Season, "spring")], meanwhile!);
        Assert.Equal(("trying", "spring"), (Said![Saying.Standing], Said[Saying.Season]));
    }

    /// <summary>Who types what another window said already is at one with it.</summary>
    [Fact]
    public void SameWordFromTwoWindows_IsNoQuarrel_AndIsSaidOnce()
    {
        open.Said.Say(Sort, Rolls, Saying.Family, "soft rolls");
        Assert.Empty(open.Said.Say(Sort, Rolls, [new(Saying.Family, "", "soft rolls"), new(Saying.Season, "", "autumn")])!);
        Assert.Equal(("soft rolls", "autumn"), (Said![Saying.Family], Said[Saying.Season]));
    }

    [Fact]
    public void WhatIsTakenBackMeanwhile_IsToldAsSaidNoMore()
    {
        open.Said.Say(Sort, Rolls, Saying.Season, "spring");
        open.Said.Say(Sort, Rolls, Saying.Season, "");
        Assert.Equal([(Saying.Season, "")], open.Said.Say(Sort, Rolls, [new(Saying.Season, "spring", "autumn")])!);
        Assert.Empty(open.Said.Say(Sort, Rolls, [new(Saying.Season, "", "autumn")])!);
        Assert.Equal("autumn", Said![Saying.Season]);
    }

    [Fact]
    public void PaperThatIsNotThere_HasNothingSaidOfIt() => Assert.Null(open.Said.Say(Sort, "nobody", [new(Saying.Season, "", "autumn")]));

    /// <summary>Two windows show a recipe, and the page of one is broken: the other shows the new state all the same, and the fault is not lost.</summary>
    [Fact]
    public void ListenerThatThrows_KeepsNoOtherFromBeingTold()
    {
        List<string> told = [];
        open.Papers.Changed += (_, name) => told.Add($"first {name}");
        open.Papers.Changed += (_, _) => throw new InvalidOperationException("a page that is gone");
        open.Papers.Changed += (_, name) => told.Add($"last {name}");
        var fault = Assert.Throws<InvalidOperationException>(() => open.Papers.TakeAway(Sort, Rolls));
        Assert.Equal("a page that is gone", fault.Message);
        Assert.Equal(["first rolls", "last rolls"], told);
        Assert.Null(open.Papers.Find(Sort, Rolls));

        open.Papers.Changed += (_, _) => throw new IOException("another one");
        var both = Assert.Throws<AggregateException>(() => open.Papers.PutBack(Sort, Rolls));
        Assert.Equal(["a page that is gone", "another one"], both.InnerExceptions.Select(one => one.Message));
        Assert.Equal(["first rolls", "last rolls", "first rolls", "last rolls"], told);
        Assert.NotNull(open.Papers.Find(Sort, Rolls));
    }

    [Fact]
    public void WhoListens_IsToldOfEveryOtherState_AndOfNothingElse()
    {
        List<(PaperSort, string)> told = [];
        open.Papers.Changed += (sort, name) => told.Add((sort, open.Papers.Find(sort, name) is { } there ? $"{name} {there.Did}" : $"no {name}"));
        var first = open.Papers.Find(Sort, Rolls)!.State;
        open.Papers.Write(Sort, Rolls, first, TestBook.TextOf(7), "seventh");
        var second = open.Papers.Find(Sort, Rolls)!.State;
        Assert.IsType<WriteAnswer.Meanwhile>(open.Papers.Write(Sort, Rolls, first, TestBook.TextOf(8), "eighth"));
        Assert.IsType<WriteAnswer.NoPaper>(open.Papers.Undo(Sort, "nobody", 1));
        open.Papers.Undo(Sort, Rolls, second);
        open.Papers.Redo(Sort, Rolls, first);
        open.Papers.TakeAway(Sort, Rolls);
        Assert.False(open.Papers.TakeAway(Sort, Rolls));
        open.Papers.PutBack(Sort, Rolls);
        open.Said.Say(Sort, Rolls, Saying.Season, "autumn");
        Assert.Equal([(Sort, "rolls seventh"), (Sort, "rolls changed 1"), (Sort, "rolls seventh"), (Sort, "no rolls"), (Sort, "rolls seventh")], told);
    }
}
