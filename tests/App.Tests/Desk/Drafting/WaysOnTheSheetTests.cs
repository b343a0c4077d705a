using Doughwright.App.Desk.Drafting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>Every way out that a finding offers on the sheet can be carried out there, is in the book, and is taken back whole.</summary>
public sealed class WaysOnTheSheetTests : IDisposable
{
    private readonly Scratch scratch = Scratch.WithTheShipped();

    private static Voice Voice => new(Words.Shipped, MeasureSystem.Metric);

    public void Dispose() => scratch.Dispose();

    private Manuscript Open(string recipe) => Manuscript.Open(recipe, scratch.Folder, new OpenDrafts(), Voice)!;

    [Fact]
    public void EveryWay_IsCarriedOut_AndTakenBack()
    {
        var carried = 0;
        foreach (var file in Directory.EnumerateFiles(House.PathTo("tests", "data", "texts"), "*.yaml").Concat(Directory.EnumerateFiles(House.PathTo("tests", "data", "corpus", "sound"), "*.yaml")))
        {
            scratch.Put(Path.GetFileNameWithoutExtension(file), File.ReadAllText(file));
        }

        foreach (var name in scratch.Folder.RecipeTexts.Names())
        {
            foreach (var way in Open(name).Worked.Offers.All)
            {
                var manuscript = Open(name);
                var before = manuscript.File.Text;
                manuscript.Mend(way.Id);
                Assert.True(manuscript.Said is null, $"{name}, {way.Id}: {manuscript.Said}");
                Assert.NotEqual(before, scratch.Text(name));
                // What was weighed stays told beside its line, whatever water was added for it.
                Assert.DoesNotContain(manuscript.Worked.Offers.All, offer => offer.Id == way.Id && !offer.FindingId.StartsWith("weighed-", StringComparison.Ordinal));
                Assert.Equal(RemedyWords.Verb(way, Voice), scratch.Folder.RecipeTexts.Find(name)!.Undo);
                manuscript.Undo();
                Assert.Equal(before, scratch.Text(name));
                carried++;
            }
        }

        Assert.True(carried > 3, $"{carried} ways");
    }

    [Fact]
    public void WayThatIsGone_IsSaid_AndNothingIsWritten()
    {
        var manuscript = Open("potato-rolls");
        var before = manuscript.File.Text;
        manuscript.Mend("no-such/way");
        Assert.NotNull(manuscript.Said);
        Assert.Equal(before, scratch.Text("potato-rolls"));
    }
}
