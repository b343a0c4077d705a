using System.Collections.Concurrent;
using System.Globalization;

namespace Doughwright.App.Desk.Drafting;

/// <summary>Texts that are being typed and are not understood yet, by the recipe they are of. They outlive their window and the desk.</summary>
/// <param name="folder">Where they lie; null keeps them only as long as this object lives.</param>
internal sealed class OpenDrafts(string? folder = null)
{
    /// <summary>Texts of one recipe that can wait: one for each window that has something to be settled.</summary>
    private const int Most = 100;

    private readonly ConcurrentDictionary<string, OpenDraft> all = new(StringComparer.Ordinal);

    public OpenDraft? Of(string name) => all.TryGetValue(name, out var known) ? known : Read(name);

    /// <exception cref="IOException">It could not be written; it is known as long as the desk is open.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public void Keep(string name, OpenDraft draft)
    {
        all[name] = draft;
        if (FileOf(name) is not { } file)
        {
            return;
        }

        Directory.CreateDirectory(folder!);
        var unfinished = $"{file}.unfinished";
        using (var stream = new FileStream(unfinished, FileMode.Create))
        {
            using (var writer = new StreamWriter(stream, leaveOpen: true))
            {
                writer.Write(string.Create(CultureInfo.InvariantCulture, $"{draft.From}\n{draft.Text}"));
            }

            stream.Flush(flushToDisk: true);
        }

        File.Move(unfinished, file, overwrite: true);
    }

    /// <summary>Lets go of one, when it is still the one that is kept: another window may have typed since.</summary>
    /// <exception cref="IOException">Its file could not be taken away.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public void Drop(string name, OpenDraft draft)
    {
        if (Of(name) != draft)
        {
            return;
        }

        Remove(name);
        // What waited behind it comes up.
        var waiting = Places(name).FirstOrDefault(place => Of(place) is not null);
        if (waiting is not null && Of(waiting) is { } next)
        {
            Keep(name, next);
            Remove(waiting);
        }
    }

    /// <summary>Keeps a second text of a recipe behind the one that is kept already.</summary>
    /// <exception cref="IOException">It could not be written; it is known as long as the desk is open.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public void Wait(string name, OpenDraft draft) => Keep(Of(name) is null ? name : Places(name).First(place => Of(place) is null), draft);

    /// <summary>Lets go of one wherever it is kept.</summary>
    /// <exception cref="IOException">Its file could not be taken away.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public void DropWaiting(string name, OpenDraft draft)
    {
        if (Places(name).TakeWhile(place => Of(place) is not null).FirstOrDefault(place => Of(place) == draft) is { } place)
        {
            Remove(place);
            return;
        }

        Drop(name, draft);
    }

    /// <summary>Names of texts never hold a slash, so these are nobody's.</summary>
    private static IEnumerable<string> Places(string name) => Enumerable.Range(2, Most).Select(place => string.Create(CultureInfo.InvariantCulture, $"{name}/{place}"));

    private void Remove(string place)
    {
        all.TryRemove(place, out _);
        if (FileOf(place) is { } file)
        {
            File.Delete(file);
        }
    }

    private OpenDraft? Read(string name)
    {
        if (FileOf(name) is not { } file || !File.Exists(file))
        {
            return null;
        }

        var text = File.ReadAllText(file);
        var end = text.IndexOf('\n', StringComparison.Ordinal);
        return end > 0 && long.TryParse(text[..end], NumberStyles.None, CultureInfo.InvariantCulture, out var from) ? new(from, text[(end + 1)..]) : null;
    }

    private string? FileOf(string name) => folder is null ? null : Path.Join(folder, Uri.EscapeDataString(name) + ".draft");
}

/// <summary>A text as it was typed last.</summary>
/// <param name="From">The state that it was typed over.</param>
internal sealed record OpenDraft(long From, string Text);
