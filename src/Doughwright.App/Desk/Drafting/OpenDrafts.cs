using System.Collections.Concurrent;

namespace Doughwright.App.Desk.Drafting;

/// <summary>Texts that are being typed and are not understood yet, by the recipe they are of. They outlive their window, as long as the desk is open.</summary>
internal sealed class OpenDrafts
{
    private readonly ConcurrentDictionary<string, OpenDraft> all = new(StringComparer.Ordinal);

    public OpenDraft? Of(string name) => all.GetValueOrDefault(name);

    public void Keep(string name, OpenDraft draft) => all[name] = draft;

    public void Drop(string name) => all.TryRemove(name, out _);
}

/// <summary>A text as it was typed last.</summary>
/// <param name="From">The state that it was typed over.</param>
internal sealed record OpenDraft(long From, string Text);
