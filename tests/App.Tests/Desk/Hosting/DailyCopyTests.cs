using Doughwright.App.Desk.Hosting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book;
using Microsoft.Extensions.Logging;

namespace Doughwright.App.Tests.Desk.Hosting;

public class DailyCopyTests
{
    [Fact]
    public async Task DeskThatIsOpened_CopiesItsBook_OnceADay()
    {
        using var scratch = Scratch.WithTheShipped();
        for (var opened = 0; opened < 2; opened++)
        {
            await using var desk = await LiveDesk.On(scratch.Data);
            for (var wait = 0; wait < 200 && AuthorsBook.CopiesOf(scratch.Data.Book).Count == 0; wait++)
            {
                await Task.Delay(50, TestContext.Current.CancellationToken);
            }

            Assert.NotNull(AuthorsBook.LatestSoundCopy(scratch.Data.Book));
        }

        Assert.Single(AuthorsBook.CopiesOf(scratch.Data.Book));
    }

    /// <summary>Where the folder of the copies should be lies a file: it is told, and the desk goes on waiting for the next hour.</summary>
    [Fact]
    public async Task CopyThatFails_IsTold_AndStopsNothing()
    {
        using var scratch = new Scratch();
        await File.WriteAllTextAsync(Path.Join(scratch.Data.Root, "copies"), "in the way", TestContext.Current.CancellationToken);
        var log = new HeardLog();
        using var copies = new DailyCopy(scratch.Folder, TimeProvider.System, log);
        await copies.StartAsync(TestContext.Current.CancellationToken);
        var said = await log.First.Task.WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);
        Assert.Contains(Path.Join("copies", DateTime.UtcNow.ToString("yyyy-", System.Globalization.CultureInfo.InvariantCulture)), said, StringComparison.Ordinal);
        Assert.False(copies.ExecuteTask!.IsCompleted);
        await copies.StopAsync(TestContext.Current.CancellationToken);
        Assert.True(copies.ExecuteTask.IsCompletedSuccessfully);
        Assert.Equal("in the way", await File.ReadAllTextAsync(Path.Join(scratch.Data.Root, "copies"), TestContext.Current.CancellationToken));
    }

    private sealed class HeardLog : ILogger<DailyCopy>
    {
        public TaskCompletionSource<string> First { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            First.TrySetResult(formatter(state, exception));
    }
}
