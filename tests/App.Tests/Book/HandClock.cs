namespace Doughwright.App.Tests.Book;

/// <summary>A clock that a test sets by hand.</summary>
internal sealed class HandClock(DateTimeOffset now) : TimeProvider
{
    public DateTimeOffset Now { get; set; } = now;

    public override DateTimeOffset GetUtcNow() => Now;
}
