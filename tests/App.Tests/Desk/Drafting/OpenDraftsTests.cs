using Doughwright.App.Desk.Drafting;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>Begun texts: what is kept behind another is not lost, and comes up when that one is settled.</summary>
public sealed class OpenDraftsTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("drafts-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private OpenDrafts Again => new(folder);

    [Fact]
    public void TextThatWaits_ComesUpWhenTheOneBeforeItIsDone_AlsoAfterTheDeskWasClosed()
    {
        var (begun, mine, third) = (new OpenDraft(1, "begun"), new OpenDraft(2, "mine"), new OpenDraft(3, "third"));
        Again.Keep("rolls", begun);
        Again.Wait("rolls", mine);
        Again.Wait("rolls", third);
        Assert.Equal(begun, Again.Of("rolls"));
        Again.Drop("rolls", begun);
        Assert.Equal(mine, Again.Of("rolls"));
        Again.Drop("rolls", mine);
        Assert.Equal(third, Again.Of("rolls"));
        Again.Drop("rolls", third);
        Assert.Null(Again.Of("rolls"));
        Assert.Empty(Directory.GetFiles(folder));
    }

    [Fact]
    public void TextThatIsSettled_IsLetGoWhereverItIsKept_AndNoOther()
    {
        var (begun, mine) = (new OpenDraft(1, "begun"), new OpenDraft(2, "mine"));
        Again.Keep("rolls", begun);
        Again.Wait("rolls", mine);
        Again.DropWaiting("rolls", mine);
        Assert.Equal(begun, Again.Of("rolls"));
        Again.Drop("rolls", begun);
        Assert.Null(Again.Of("rolls"));

        // Alone, it is the one that is kept; another recipe's stays.
        Again.Wait("rolls", mine);
        Again.Wait("loaf", begun);
        Assert.Equal(mine, Again.Of("rolls"));
        Again.DropWaiting("rolls", mine);
        Assert.Null(Again.Of("rolls"));
        Assert.Equal(begun, Again.Of("loaf"));
    }
}
