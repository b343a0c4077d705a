namespace Doughwright.Engine.TextForm;

/// <summary>What kind a part or a step is: said under "kind", or by its id when that is a kind word.</summary>
internal static class KindWord
{
    public const string Key = "kind";

    /// <summary>Trade words for a kind. Offered, never taken: a poolish is a preferment, but the text should say so.</summary>
    private static readonly Dictionary<string, string> Offers = new()
    {
        ["poolish"] = "preferment",
        ["biga"] = "preferment",
        ["sponge"] = "preferment",
        ["levain"] = "preferment",
        ["starter"] = "preferment",
        ["tangzhong"] = "scald",
        ["yudane"] = "scald",
        ["roux"] = "scald",
        ["mash"] = "puree",
        ["glaze"] = "icing",
        ["brush"] = "glaze",
        ["knead"] = "mix",
        ["divide"] = "shape",
        ["ferment"] = "bulk",
        ["rise"] = "bulk",
        ["retard"] = "bulk",
        ["boil"] = "cook",
        ["chop"] = "prepare",
        ["peel"] = "prepare",
    };

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
        var offer = Offers.GetValueOrDefault(written);
        var nearest = offer is not null && known.Contains(offer) ? offer : Nearest.Of(written, known);
        return [("word", written), ("nearest", nearest), ("known", string.Join(", ", known))];
    }
}
