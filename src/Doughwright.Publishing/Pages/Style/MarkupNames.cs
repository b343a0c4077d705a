using System.Text.RegularExpressions;

namespace Doughwright.Publishing.Pages.Style;

/// <summary>The elements and classes of a piece of markup.</summary>
internal sealed partial class MarkupNames
{
    private readonly HashSet<string> elements = new(StringComparer.OrdinalIgnoreCase) { "html", "body", "head" };
    private readonly HashSet<string> classes = new(StringComparer.Ordinal);

    public static MarkupNames Of(string markup)
    {
        var names = new MarkupNames();
        names.elements.UnionWith(Tag().Matches(markup).Select(tag => tag.Groups["element"].Value));
        // Text holds no quotation marks of its own: they are escaped.
        names.classes.UnionWith(Class().Matches(markup).SelectMany(found => found.Groups["classes"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

        return names;
    }

    /// <summary>Whether every element and class that a selector names is there. One that goes by an id is not ours.</summary>
    public bool Hold(string selector) =>
        !selector.Contains('#')
        && ClassName().Matches(selector).All(name => classes.Contains(name.Groups["name"].Value))
        && ElementName().Matches(selector).All(name => elements.Contains(name.Value));

    [GeneratedRegex("<(?<element>[a-zA-Z][a-zA-Z0-9]*)")]
    private static partial Regex Tag();

    [GeneratedRegex("\\sclass=\"(?<classes>[^\"]*)\"")]
    private static partial Regex Class();

    [GeneratedRegex(@"\.(?<name>[A-Za-z][\w-]*)")]
    private static partial Regex ClassName();

    [GeneratedRegex(@"(?<![\w.#-])[A-Za-z][\w-]*")]
    private static partial Regex ElementName();
}
