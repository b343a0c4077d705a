using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

public class ShelfWorkTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);

    [Fact]
    public async Task RecipeThatFails_SaysSoInItsRow_AndTheOthersGoOn()
    {
        using var scratch = Scratch.WithTheShipped();
        var bad = scratch.Folder.Recipe("potato-rolls")!;
        var told = new List<string>();
        var work = ShelfWork.Begin(scratch.Folder, new(null, null, null), ShelfKitchen.Own, new(scratch.Data, SealKey.OfThisDesk()), new(Words.Shipped), Metric, (name, fault) => told.Add($"{name}: {fault.Message}"));
        work.Make = (bytes, kitchen, voice) => bytes.AsSpan().SequenceEqual(bad) ? throw new InvalidOperationException("on purpose") : RowMaker.Make(bytes, kitchen, voice);

        await work.Finish(TestContext.Current.CancellationToken);

        Assert.Equal(["potato-rolls: on purpose"], told);
        Assert.Equal(work.Entries.Count, work.Done);
        Assert.All(work.Entries.Where(entry => entry.Name != "potato-rolls"), entry => Assert.NotNull(entry.Strip));
        var clock = ShelfClockTests.ClockAt("2026-11-25T10:00", TimeZoneInfo.Utc);
        var asked = ShelfAsked.Read(_ => null, clock, [], named => named, Metric);
        var row = Assert.Single(ShelfView.Of(work, asked, clock, Metric).Rows, row => row.Title == "potato-rolls");
        Assert.Equal([Words.Shipped["shelf.row-fault"]], row.Lines);
    }
}
