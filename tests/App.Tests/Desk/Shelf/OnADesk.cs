namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>A book with a desk on it, open for one test.</summary>
public abstract class OnADesk : IAsyncLifetime
{
    private protected OnADesk(Scratch scratch) => Scratch = scratch;

    private protected Scratch Scratch { get; }

    private protected LiveDesk Desk { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Desk = await LiveDesk.On(Scratch.Data);

    public async ValueTask DisposeAsync()
    {
        await Desk.DisposeAsync();
        Scratch.Dispose();
        GC.SuppressFinalize(this);
    }
}
