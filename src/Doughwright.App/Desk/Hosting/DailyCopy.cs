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
        // The first page comes first.
        await Task.Yield();
        using var timer = new PeriodicTimer(Between, clock);
        do
        {
            try
            {
                await Task.Run(() => shelf.Book.CopyOfTheDay(clock.GetUtcNow()), closing);
            }
            catch (BookException problem)
            {
                NotCopied(log, problem.Path, problem.Message);
            }
            catch (ObjectDisposedException)
            {
                // The book was closed: nothing is written in it any more.
                return;
            }
        }
        while (await timer.WaitForNextTickAsync(closing));
    }

    [LoggerMessage(LogLevel.Error, "The book was not copied to {Path}: {Reason}")]
    private static partial void NotCopied(ILogger log, string path, string reason);
}
