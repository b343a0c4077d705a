namespace Doughwright.App.Desk.Shelf;

/// <summary>A shelf that is being rehearsed, for the part of the page that follows it.</summary>
/// <param name="Finishing">Ends when all rows are known.</param>
internal sealed record ShelfRunning(ShelfWork Work, Task Finishing, ShelfAsked Asked)
{
    /// <summary>Waits until all rows are known, but no longer than this.</summary>
    public async Task Wait(TimeSpan longest, CancellationToken leaving)
    {
        if (await Task.WhenAny(Finishing, Task.Delay(longest, leaving)) == Finishing)
        {
            await Finishing;
        }

        leaving.ThrowIfCancellationRequested();
    }
}
