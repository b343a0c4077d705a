using System.Text;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Telling;

/// <summary>A sentence with figures, fields, cues and links in it, each in its place.</summary>
public sealed record Told(IReadOnlyList<Piece> Pieces)
{
    // Letters that no text has: Unicode keeps them for private use, and what an author wrote is cleaned of them.
    private const char Open = '\uE000';
    private const char Close = '\uE001';

    public static Told Nothing { get; } = new([]);

    public bool IsEmpty => Pieces.Count == 0;

    /// <summary>The words alone.</summary>
    public string Text => string.Concat(Pieces.Select(piece => piece.Words));

    public static Told Of(string words) => words.Length == 0 ? Nothing : new([new Piece.Plain(words)]);

    public static Told Of(Fig figure) => new([new Piece.Figure(figure)]);

    /// <summary>Words of the resources; arguments may be figures, fields, pieces, or sentences of their own.</summary>
    internal static Told Say(Voice voice, string key, params ReadOnlySpan<(string Name, object? Value)> arguments)
    {
        var inside = new List<Told>();
        var plain = new (string, object?)[arguments.Length];
        for (var i = 0; i < arguments.Length; i++)
        {
            plain[i] = (arguments[i].Name, Held(arguments[i].Value, inside));
        }

        return new(Cut(voice.Say(key, plain), inside));
    }

    /// <summary>One after the other, with words between.</summary>
    public static Told Join(IEnumerable<Told> all, string between)
    {
        var pieces = new List<Piece>();
        foreach (var told in all.Where(told => !told.IsEmpty))
        {
            if (pieces.Count > 0)
            {
                pieces.Add(new Piece.Plain(between));
            }

            pieces.AddRange(told.Pieces);
        }

        return new(pieces);
    }

    private static object? Held(object? value, List<Told> inside)
    {
        Told? told = value switch
        {
            Told already => already,
            Fig figure => Of(figure),
            Field field => new([new Piece.Input(field)]),
            Piece piece => new([piece]),
            _ => null,
        };
        if (told is null)
        {
            return value is string text ? text.Replace(Open, '\uFFFD').Replace(Close, '\uFFFD') : value;
        }

        inside.Add(told);
        return $"{Open}{inside.Count - 1}{Close}";
    }

    private static List<Piece> Cut(string said, List<Told> inside)
    {
        var pieces = new List<Piece>();
        var words = new StringBuilder();
        for (var at = 0; at < said.Length; at++)
        {
            if (said[at] != Open)
            {
                words.Append(said[at]);
                continue;
            }

            var close = said.IndexOf(Close, at);
            Flush();
            pieces.AddRange(inside[int.Parse(said[(at + 1)..close], System.Globalization.CultureInfo.InvariantCulture)].Pieces);
            at = close;
        }

        Flush();
        return pieces;

        void Flush()
        {
            if (words.Length > 0)
            {
                pieces.Add(new Piece.Plain(words.ToString()));
                words.Clear();
            }
        }
    }
}
