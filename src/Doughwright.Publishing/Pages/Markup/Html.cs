using System.Text;

namespace Doughwright.Publishing.Pages.Markup;

/// <summary>
/// Writes markup. Text and values of attributes are escaped whatever they hold; names of elements and attributes are ours. What an author
/// wrote goes in by <see cref="Author"/>, so that a script of the other direction stays within its own element.
/// </summary>
internal sealed class Html
{
    private static readonly HashSet<string> Empty = new(StringComparer.Ordinal) { "br", "meta", "hr", "img" };

    private readonly StringBuilder markup = new(64 * 1024);
    private readonly Stack<string> open = new();

    /// <summary>Opens an element; it is closed when what is given back is disposed of.</summary>
    public Scope In(string element, string? @class = null, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Start(element, @class, attributes);
        open.Push(element);
        return new(this);
    }

    /// <summary>An element with words of ours in it.</summary>
    public Html Put(string element, string text, string? @class = null, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Start(element, @class, attributes);
        if (!Empty.Contains(element))
        {
            Text(text).markup.Append("</").Append(element).Append('>');
        }

        return this;
    }

    /// <summary>An element with words of the author in it, in the direction of their own script.</summary>
    public Html Author(string element, string text, string? @class = null, params ReadOnlySpan<(string Name, string? Value)> attributes) =>
        Put(element, text, @class, [.. attributes, ("dir", "auto")]);

    /// <summary>Text within the element that is open.</summary>
    public Html Text(string text)
    {
        Escape(markup, text);
        return this;
    }

    /// <summary>Markup that was written by us and escaped where it was made: a picture, another piece.</summary>
    public Html Raw(string written)
    {
        markup.Append(written);
        return this;
    }

    public Html Line()
    {
        markup.Append('\n');
        return this;
    }

    public override string ToString() => open.Count == 0 ? markup.ToString() : throw new InvalidOperationException($"The element {open.Peek()} is still open.");

    /// <summary>Any text, harmless within an element and within a quoted attribute.</summary>
    public static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        Escape(escaped, text);
        return escaped.ToString();
    }

    private static void Escape(StringBuilder into, string text)
    {
        foreach (var letter in Harmless.Clean(text))
        {
            _ = letter switch
            {
                '<' => into.Append("&lt;"),
                '>' => into.Append("&gt;"),
                '&' => into.Append("&amp;"),
                '"' => into.Append("&quot;"),
                '\'' => into.Append("&#39;"),
                '\u00a0' => into.Append("&#160;"),
                _ => into.Append(letter),
            };
        }
    }

    private void Start(string element, string? @class, ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        markup.Append('<').Append(element);
        Attribute("class", @class);
        foreach (var (name, value) in attributes)
        {
            Attribute(name, value);
        }

        markup.Append('>');
    }

    private void Attribute(string name, string? value)
    {
        if (value is not null)
        {
            markup.Append(' ').Append(name).Append("=\"");
            Escape(markup, value);
            markup.Append('"');
        }
    }

    private void Close() => markup.Append("</").Append(open.Pop()).Append('>');

    /// <summary>An element that is open until this is disposed of.</summary>
    public readonly ref struct Scope(Html html)
    {
        public void Dispose() => html.Close();
    }
}
