using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Running;

/// <summary>A window whose desk can be made to answer late: what it says waits until it is let through, in its order.</summary>
internal sealed class SlowDesk
{
    private readonly ConcurrentQueue<Action> _waiting = new();
    private readonly TaskCompletionSource _answered = new();
    private volatile bool _holds;

    /// <summary>Loads the page again, from now on through this.</summary>
    public static async Task<SlowDesk> Between(Visit visit)
    {
        var desk = new SlowDesk();
        await visit.Page.RouteWebSocketAsync("**/_blazor**", desk.Join);
        await visit.Page.ReloadAsync(new() { WaitUntil = WaitUntilState.Load });
        await desk._answered.Task.WaitAsync(TimeSpan.FromSeconds(20));
        await visit.Page.EvaluateAsync("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
        return desk;
    }

    /// <summary>Keeps back what the desk says.</summary>
    public void Hold() => _holds = true;

    /// <summary>Lets through what was kept back, and what comes.</summary>
    public void Release()
    {
        _holds = false;
        while (_waiting.TryDequeue(out var say))
        {
            say();
        }
    }

    private void Join(IWebSocketRoute window)
    {
        var desk = window.ConnectToServer();
        desk.OnMessage(frame =>
        {
            if (frame.Binary?.AsSpan().IndexOf("JS.RenderBatch"u8) >= 0)
            {
                _answered.TrySetResult();
            }

            void Say()
            {
                if (frame.Binary is { } bytes)
                {
                    window.Send(bytes);
                }
                else
                {
                    window.Send(frame.Text!);
                }
            }

            if (_holds)
            {
                _waiting.Enqueue(Say);
            }
            else
            {
                Say();
            }
        });
    }
}
