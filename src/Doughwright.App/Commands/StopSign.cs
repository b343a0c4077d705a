namespace Doughwright.App.Commands;

/// <summary>The first interruption from the keyboard asks a long command to end with what it has; the second ends the program.</summary>
internal sealed class StopSign : IDisposable
{
    private readonly CancellationTokenSource source = new();

    public StopSign() => Console.CancelKeyPress += Stop;

    public CancellationToken Token => source.Token;

    public void Dispose()
    {
        Console.CancelKeyPress -= Stop;
        source.Dispose();
    }

    private void Stop(object? sender, ConsoleCancelEventArgs pressed)
    {
        pressed.Cancel = !source.IsCancellationRequested;
        source.Cancel();
    }
}
