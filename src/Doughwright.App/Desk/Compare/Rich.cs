using System.Text.RegularExpressions;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>A sentence some of whose pieces are set apart.</summary>
internal sealed partial record Rich(IReadOnlyList<Bit> Bits)
{
    public static Rich Nothing { get; } = new([]);

    public bool IsEmpty => Bits.Count == 0;

    /// <summary>As plain words.</summary>
    public string Text => string.Concat(Bits.Select(bit => bit.Text));

    public static implicit operator Rich(Bit bit) => new([bit]);

    public static Rich Plain(string text) => new([new(text)]);

    /// <summary>Words with pieces put in: {name} takes a piece, a sentence, or any value that the voice can say.</summary>
    public static Rich Say(Voice voice, string key, params IReadOnlyList<(string Name, object Value)> arguments)
    {
        var bits = new List<Bit>();
        foreach (var piece in Pieces().Split(voice.Words[key]))
        {
            if (piece is not ['{', .., '}'])
            {
                Add(bits, new(piece));
                continue;
            }

            var name = piece[1..^1];
            switch (arguments.FirstOrDefault(argument => argument.Name == name).Value)
            {
                case Rich rich:
                    bits.AddRange(rich.Bits);
                    break;
                case Bit bit:
                    bits.Add(bit);
                    break;
                case { } value:
                    Add(bits, new(voice.Text(value)));
                    break;
                default:
                    Add(bits, new(piece));
                    break;
            }
        }

        return new(bits);
    }

    /// <summary>"one, another and a third".</summary>
    public static Rich List(Voice voice, IReadOnlyList<Rich> items)
    {
        if (items.Count < 2)
        {
            return items.Count == 0 ? Nothing : items[0];
        }

        var first = items[0];
        foreach (var item in items.Skip(1).SkipLast(1))
        {
            first = new([.. first.Bits, new(voice.Words["list-comma"]), .. item.Bits]);
        }

        return Say(voice, "list-and", ("first", first), ("last", items[^1]));
    }

    private static void Add(List<Bit> bits, Bit bit)
    {
        if (bit.Text.Length > 0)
        {
            bits.Add(bit);
        }
    }

    [GeneratedRegex(@"(\{[a-z-]+\})")]
    private static partial Regex Pieces();
}
