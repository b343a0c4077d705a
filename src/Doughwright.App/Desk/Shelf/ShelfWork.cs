using System.Text.Json;
using Doughwright.Book.Papers;
using Doughwright.Engine.Kitchens;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The recipes of a shelf in one kitchen: what is kept at once, the rest as it is rehearsed.</summary>
internal sealed class ShelfWork
{
    /// <summary>Keeps the rows of a key beside the strips of the same key.</summary>
    private const string RowName = "-row";

    private readonly KeptResults kept;
    private readonly Kitchen? kitchen;
    private readonly Voice voice;
    private readonly Action<string, Exception> tellFault;

    private ShelfWork(KeptResults kept, Kitchen? kitchen, Voice voice, Action<string, Exception> tellFault, IReadOnlyList<ShelfEntry> entries)
    {
        this.kept = kept;
        this.kitchen = kitchen;
        this.voice = voice;
        this.tellFault = tellFault;
        Entries = entries;
    }

    public IReadOnlyList<ShelfEntry> Entries { get; }

    /// <summary>Clock and thickness of the strips; null until all rows are known.</summary>
    public ShelfScale? Scale { get; private set; }

    /// <summary>Makes a row and what its strip is drawn from.</summary>
    public Func<byte[], Kitchen?, Voice, (KeptRow Row, Drawable? Drawable)> Make { private get; set; } = RowMaker.Make;

    public int Done => Entries.Count(entry => entry.IsDone);

    /// <summary>Looks into the book and takes what is kept.</summary>
    /// <param name="tellFault">Is told the name of a recipe that failed by a fault of ours, and the fault; the others go on.</param>
    /// <exception cref="IOException">The book cannot be read.</exception>
    public static ShelfWork Begin(
        ShelfFolder shelf, ShelfFilter filter, ShelfKitchen kitchen, KeptResults kept, RowKey keys, Voice voice, Action<string, Exception> tellFault)
    {
        var (texts, said) = (shelf.RecipeTexts, shelf.Book.Said.All(PaperSort.Recipe));
        var entries = texts.Papers().Where(paper => filter.Shows(said.GetValueOrDefault(paper.Name))).AsParallel().AsOrdered().Select(paper =>
        {
            var bytes = texts.Read(paper);
            var key = keys.Of(paper.Name, bytes, kitchen.Bytes, voice);
            return new ShelfEntry(paper.Name, bytes, key) { Row = KeptRowOf(kept, key), Said = said.GetValueOrDefault(paper.Name) };
        });
        return new(kept, kitchen.Kitchen, voice, tellFault, [.. entries]);
    }

    /// <summary>Rehearses what is not known and draws what is not drawn.</summary>
    public async Task Finish(CancellationToken leaving)
    {
        await ForEach(Entries.Where(entry => !entry.IsDone), Rehearse, leaving);
        var scale = ShelfScale.Of(Entries.Select(entry => entry.Row));
        await ForEach(Entries.Where(entry => entry.Row is { HasCourse: true }), entry => Draw(entry, scale), leaving);
        Scale = scale;
        kept.Trim(Entries.Count);
    }

    private Task ForEach(IEnumerable<ShelfEntry> entries, Action<ShelfEntry> act, CancellationToken leaving) =>
        Parallel.ForEachAsync(entries, leaving, (entry, stop) =>
        {
            stop.ThrowIfCancellationRequested();
            try
            {
                act(entry);
            }
            catch (Exception fault)
            {
                // A row without a strip says so by itself.
                entry.Failed = true;
                tellFault(entry.Name, fault);
            }

            return ValueTask.CompletedTask;
        });

    private static KeptRow? KeptRowOf(KeptResults kept, string key)
    {
        try
        {
            return kept.Find(key + RowName) is { } text ? JsonSerializer.Deserialize(text, KeptRowJson.Default.KeptRow) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private void Rehearse(ShelfEntry entry)
    {
        var (row, drawable) = Make(entry.Bytes, kitchen, voice);
        kept.Keep(entry.Key + RowName, JsonSerializer.Serialize(row, KeptRowJson.Default.KeptRow));
        entry.Drawable = drawable;
        entry.Row = row;
    }

    private void Draw(ShelfEntry entry, ShelfScale scale)
    {
        entry.TooTall = entry.Row is { } row && !scale.Holds(row);
        if (entry.TooTall)
        {
            entry.Drawable = null;
            return;
        }

        var name = $"{entry.Key}-{scale.Name}";
        entry.Strip = kept.Find(name);
        if (entry.Strip is null && (entry.Drawable ?? Make(entry.Bytes, kitchen, voice).Drawable) is { } drawable)
        {
            entry.Strip = ShelfStrips.Draw(drawable, scale, "m" + entry.Key[..10], voice);
            kept.Keep(name, entry.Strip);
        }

        entry.Drawable = null;
    }
}
