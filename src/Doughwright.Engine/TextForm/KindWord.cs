namespace Doughwright.Engine.TextForm;

/// <summary>What kind a part or a step is: said under "kind", or by its id when that is a kind word.</summary>
internal static class KindWord
{
    public const string Key = "kind";

    public static T? Read<T>(Section section, string id, TextEntry entry) where T : struct, Enum
    {
        if (!section.Has(Key))
        {
            if (EnumWords<T>.Find(id) is { } byId)
            {
                return byId;
            }

            section.Log.Fault(FormFaults.KindMissing, section.Place, entry.KeyPosition, Arguments<T>(id));
            return null;
        }

        if (section.Words(Key) is not { } words)
        {
            return null;
        }

        if (EnumWords<T>.Find(words.Text) is { } kind)
        {
            return kind;
        }

        words.Log.Fault(FormFaults.UnknownKind, words.Place, words.Position, Arguments<T>(words.Text));
        return null;
    }

    private static (string, object)[] Arguments<T>(string written) where T : struct, Enum
    {
        string[] known = [.. EnumWords<T>.All];
        return [("word", written), ("nearest", TradeWords.Offer(written, known)), ("known", string.Join(", ", known))];
    }
}
