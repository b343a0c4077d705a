using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Files.Styles;

/// <summary>The sheets of the screens, as far as they say how a picture looks: one source for the page and for the file.</summary>
internal sealed partial class StyleSheet
{
    private const string DarkScreens = "@media (prefers-color-scheme: dark)";
    private const string Root = ":root";

    private static readonly string[] Paints =
    [
        "fill", "stroke", "stroke-width", "stroke-dasharray", "stroke-linejoin", "opacity", "paint-order", "stop-color",
        "font", "font-size", "font-weight", "font-style", "font-variant-numeric",
    ];

    private static readonly Lazy<StyleSheet> TheShipped = new(ReadShipped);

    private readonly List<StyleRule> rules = [];
    private readonly Dictionary<string, string> light = [];
    private readonly Dictionary<string, string> dark = [];

    /// <summary>Values that only stand where an element has a class: the colour of a temperature.</summary>
    private readonly Dictionary<string, string> warmths = [];

    public static StyleSheet Shipped => TheShipped.Value;

    public IReadOnlyList<StyleRule> Rules => rules;

    public IReadOnlyDictionary<string, string> Warmths => warmths;

    /// <summary>A value with the tokens of a ground put in; what is to be mixed is mixed.</summary>
    public string Resolve(string value, Ground ground)
    {
        while (Variable().Match(value) is { Success: true } found)
        {
            value = value.Replace(found.Value, Token(found.Groups["name"].Value, ground), StringComparison.Ordinal);
        }

        return Mixed().Replace(value, match =>
        {
            var (first, second) = (match.Groups["first"], match.Groups["second"]);
            var share = second.Length > 0 ? Share(second.Value) : first.Length > 0 ? 1 - Share(first.Value) : 0.5;
            return Oklab.Mix(match.Groups["one"].Value, match.Groups["other"].Value, share);
        });
    }

    private static double Share(string percent) => double.Parse(percent, System.Globalization.CultureInfo.InvariantCulture) / 100;

    private string Token(string name, Ground ground) => ground == Ground.Dark && dark.TryGetValue(name, out var own) ? own
        : light.TryGetValue(name, out var token) ? token
        : throw new FormatException($"The sheets of style have no token {name}.");

    private void Read(string css)
    {
        css = Comment().Replace(css, "");
        for (var at = 0; at < css.Length;)
        {
            var open = css.IndexOf('{', at);
            if (open < 0)
            {
                return;
            }

            var close = EndOf(css, open);
            var (before, body) = (css[at..open].Trim(), css[(open + 1)..close]);
            at = close + 1;
            if (before == DarkScreens)
            {
                AddTokens(body[(body.IndexOf('{', StringComparison.Ordinal) + 1)..body.LastIndexOf('}')], dark);
            }
            else if (before == Root)
            {
                AddTokens(body, light);
            }
            else if (!before.StartsWith('@'))
            {
                AddRule(before, body);
            }
        }
    }

    private static int EndOf(string css, int open)
    {
        var depth = 0;
        for (var at = open; ; at++)
        {
            depth += css[at] == '{' ? 1 : css[at] == '}' ? -1 : 0;
            if (depth == 0)
            {
                return at;
            }
        }
    }

    private static IEnumerable<(string Name, string Value)> Declarations(string body) => body.Split(';')
        .Select(line => line.Split(':', 2))
        .Where(pair => pair.Length == 2)
        .Select(pair => (pair[0].Trim(), pair[1].Trim()));

    private static void AddTokens(string body, Dictionary<string, string> tokens)
    {
        foreach (var (name, value) in Declarations(body))
        {
            tokens[name] = value;
        }
    }

    private void AddRule(string selectors, string body)
    {
        var all = Declarations(body).ToList();
        if (all is [("--w", var warmth)])
        {
            warmths[selectors.TrimStart('.')] = warmth;
            return;
        }

        var paints = all.Where(declaration => Paints.Contains(declaration.Name)).ToList();
        var read = selectors.Split(',').Select(Selector.Read).OfType<Selector>().ToList();
        if (paints.Count > 0 && read.Count > 0)
        {
            rules.Add(new(read, paints));
        }
    }

    private static StyleSheet ReadShipped()
    {
        var sheet = new StyleSheet();
        foreach (var name in (string[])["page.tokens.css", "page.desk.css"])
        {
            sheet.Read(Encoding.UTF8.GetString(EmbeddedFile.Bytes(Assembly.GetExecutingAssembly(), name)));
        }

        return sheet;
    }

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"var\((?<name>--[\w-]+)\)")]
    private static partial Regex Variable();

    [GeneratedRegex(@"color-mix\(in oklab, (?<one>#[0-9a-f]{6})( (?<first>[\d.]+)%)?, (?<other>#[0-9a-f]{6})( (?<second>[\d.]+)%)?\)")]
    private static partial Regex Mixed();
}

/// <summary>One rule of a sheet.</summary>
internal sealed record StyleRule(IReadOnlyList<Selector> Selectors, IReadOnlyList<(string Name, string Value)> Declarations);
