using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Opening;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Doughwright.App.Desk.Hosting;

/// <summary>Copies the book once a day while the desk is open, beside everything else. A copy that fails is told, and tried again an hour later.</summary>
internal sealed partial class DailyCopy(ShelfFolder shelf, TimeProvider clock, ILogger<DailyCopy> log) : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromHours(1);

    protected override async Task ExecuteAsync(CancellationToken closing)
    {
        using var timer = new PeriodicTimer(Between, clock);
        try
        {
            do
            {
                // Never on the caller's thread: the first page comes first.
                await Task.Run(Copy, closing);
            }
            while (await timer.WaitForNextTickAsync(closing));
        }
        catch (Exception end) when (end is ObjectDisposedException or OperationCanceledException)
        {
            // The desk is closing, or has closed the book: nothing is written any more.
        }
    }

    private void Copy()
    {
        try
        {
            shelf.Book.CopyOfTheDay(clock.GetUtcNow());
        }
        catch (BookException problem)
        {
            NotCopied(log, problem.Path, problem.Message);
        }
    }

    [LoggerMessage(LogLevel.Error, "The book was not copied to {Path}: {Reason}")]
    private static partial void NotCopied(ILogger log, string path, string reason);
}
