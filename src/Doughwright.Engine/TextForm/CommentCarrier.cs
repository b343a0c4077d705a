using Doughwright.Engine.Ingredients;
namespace Doughwright.Engine.TextForm;

/// <summary>Carries the comments of an older text over to a new tree: to the same key, or the same item, in the same place.</summary>
internal sealed class CommentCarrier
{
    private int carried;

    /// <summary>The new tree with the comments, and how many found no place because what they stood at is gone.</summary>
    public static (TextDocument Document, int Dropped) Carry(TextMapping fresh, TextDocument? older)
    {
        if (older is null)
        {
            return (new(fresh, []), 0);
        }

        var carrier = new CommentCarrier();
        var root = carrier.Mapping(fresh, older.Root);
        return (new(root, older.Closing), Count(older.Root) - carrier.carried);
    }

    /// <summary>An entry written anew with the comments in and above an older one.</summary>
    public static TextEntry Onto(TextEntry fresh, TextEntry older) => new CommentCarrier().Entry(fresh, older);

    /// <summary>How many comments a text has.</summary>
    public static int CountIn(TextDocument document) => Count(document.Root) + Count(document.Closing, null);

    private TextMapping Mapping(TextMapping fresh, TextMapping older)
    {
        var bySlug = new Dictionary<string, TextEntry>();
        foreach (var entry in older.Entries)
        {
            bySlug.TryAdd(Slug.Of(entry.Key), entry);
        }

        TextEntry WithComments(TextEntry entry) => bySlug.TryGetValue(Slug.Of(entry.Key), out var old) ? Entry(entry, old) : entry;
        return fresh with { Entries = [.. fresh.Entries.Select(WithComments)] };
    }

    private TextEntry Entry(TextEntry fresh, TextEntry older)
    {
        Took(older.Comments, older.Remark);
        var value = (fresh.Value, older.Value) switch
        {
            (TextMapping now, TextMapping then) => Mapping(now, then),
            (TextList now, TextList then) => List(now, then),
            _ => fresh.Value,
        };
        return fresh with { Comments = older.Comments, Remark = older.Remark, Value = value };
    }

    private TextList List(TextList fresh, TextList older)
    {
        var byText = new Dictionary<string, TextItem>();
        foreach (var item in older.Items)
        {
            byText.TryAdd(item.Value.Text, item);
        }

        return fresh with { Items = [.. fresh.Items.Select(item => byText.Remove(item.Value.Text, out var old) ? Item(item, old) : item)] };
    }

    private TextItem Item(TextItem fresh, TextItem older)
    {
        Took(older.Comments, older.Remark);
        return fresh with { Comments = older.Comments, Remark = older.Remark };
    }

    private void Took(IReadOnlyList<string> comments, string? remark) => carried += Count(comments, remark);

    private static int Count(IReadOnlyList<string> comments, string? remark) =>
        comments.Count(comment => comment.Length > 0) + (remark is null ? 0 : 1);

    private static int Count(TextNode node) => node switch
    {
        TextMapping mapping => mapping.Entries.Sum(entry => Count(entry.Comments, entry.Remark) + Count(entry.Value)),
        TextList list => list.Items.Sum(item => Count(item.Comments, item.Remark)),
        _ => 0,
    };
}
