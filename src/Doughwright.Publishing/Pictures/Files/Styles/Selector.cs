using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Doughwright.Publishing.Pictures.Files.Styles;

/// <summary>
/// Which elements a rule is for: names and classes, one within another. Pictures need no more; what is written otherwise is for pages, and is no
/// selector here.
/// </summary>
internal sealed partial class Selector
{
    private readonly IReadOnlyList<Part> parts;

    private Selector(string text, IReadOnlyList<Part> parts) => (Text, this.parts) = (text, parts);

    public string Text { get; }

    /// <summary>A class weighs more than any number of names.</summary>
    public int Weight => parts.Sum(part => ((part.Classes.Count + (part.ClassStart is null ? 0 : 1)) * 100) + (part.Name is null ? 0 : 1));

    public static Selector? Read(string text)
    {
        var parts = new List<Part>();
        foreach (var word in text.Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (Simple().Match(word) is not { Success: true } match)
            {
                return null;
            }

            parts.Add(new(
                match.Groups["name"] is { Length: > 0 } name ? name.Value : null,
                [.. match.Groups["class"].Captures.Select(capture => capture.Value)],
                match.Groups["start"] is { Length: > 0 } start ? start.Value : null));
        }

        return parts.Count == 0 ? null : new(text.Trim(), parts);
    }

    public bool Fits(XElement element)
    {
        if (!parts[^1].Fits(element))
        {
            return false;
        }

        var around = element.Parent;
        for (var part = parts.Count - 2; part >= 0; part--)
        {
            while (around is not null && !parts[part].Fits(around))
            {
                around = around.Parent;
            }

            if (around is null)
            {
                return false;
            }

            around = around.Parent;
        }

        return true;
    }

    /// <summary>The same with one class more on the element itself.</summary>
    public Selector And(string @class)
    {
        var last = parts[^1];
        var text = last.ClassStart is null ? $"{Text}.{@class}" : $"{last.Name}.{@class}";
        return new(text, [.. parts.SkipLast(1), last with { Classes = [.. last.Classes, @class] }]);
    }

    public static IEnumerable<string> ClassesOf(XElement element) => (element.Attribute("class")?.Value ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private sealed record Part(string? Name, IReadOnlyList<string> Classes, string? ClassStart)
    {
        public bool Fits(XElement element)
        {
            if (Name is not null && element.Name.LocalName != Name)
            {
                return false;
            }

            if (ClassStart is not null && element.Attribute("class")?.Value.StartsWith(ClassStart, StringComparison.Ordinal) != true)
            {
                return false;
            }

            var own = ClassesOf(element).ToList();
            return Classes.All(own.Contains);
        }
    }

    [GeneratedRegex("""^(?<name>[a-z]*)(\.(?<class>[a-zA-Z][\w-]*))*(\[class\^="(?<start>\w+)"\])?$""")]
    private static partial Regex Simple();
}
