using System.Text;
using System.Xml.Linq;

namespace Doughwright.Publishing.Pictures.Files.Styles;

/// <summary>The rules that one picture needs, for one ground, with every value worked out.</summary>
internal sealed class Looks
{
    private const string Warmth = "var(--w)";

    private readonly List<(Selector Selector, IReadOnlyList<(string Name, string Value)> Declarations)> rules = [];
    private readonly Dictionary<XElement, Look> known = [];

    private Looks(string paper) => Paper = paper;

    /// <summary>The colour of the ground.</summary>
    public string Paper { get; }

    /// <summary>The faces in which the picture is lettered.</summary>
    public IReadOnlyCollection<FaceCut> FacesUsed { get; private set; } = [];

    public static Looks Of(XElement root, Ground ground)
    {
        var sheet = StyleSheet.Shipped;
        var looks = new Looks(sheet.Resolve("var(--paper)", ground));
        var elements = root.DescendantsAndSelf().ToList();
        var warm = elements.SelectMany(Selector.ClassesOf).Where(sheet.Warmths.ContainsKey).Distinct().ToList();
        foreach (var rule in sheet.Rules)
        {
            foreach (var selector in rule.Selectors.Where(selector => elements.Exists(selector.Fits)))
            {
                foreach (var (own, warmth) in rule.Declarations.Any(declaration => declaration.Value.Contains(Warmth, StringComparison.Ordinal))
                    ? warm.Select(@class => (selector.And(@class), sheet.Warmths[@class])).Where(pair => elements.Exists(pair.Item1.Fits))
                    : [(selector, "")])
                {
                    looks.rules.Add((own, [.. rule.Declarations.Select(declaration =>
                        (declaration.Name, sheet.Resolve(declaration.Value.Replace(Warmth, warmth, StringComparison.Ordinal), ground)))]));
                }
            }
        }

        looks.FacesUsed = [.. elements.Where(element => element.Name.LocalName is "text" or "tspan" && element.Nodes().OfType<XText>().Any())
            .Select(element => looks.At(element).Face).Distinct()];
        return looks;
    }

    /// <summary>How an element looks: its rules by their weight, over what it has from what it stands in.</summary>
    public Look At(XElement element)
    {
        if (known.TryGetValue(element, out var look))
        {
            return look;
        }

        look = element.Parent is { } parent ? At(parent).Inherited : new Look();
        foreach (var attribute in element.Attributes())
        {
            look = look.With(attribute.Name.LocalName, attribute.Value);
        }

        foreach (var (_, declarations) in rules.Where(rule => rule.Selector.Fits(element)).OrderBy(rule => rule.Selector.Weight))
        {
            foreach (var (name, value) in declarations)
            {
                look = look.With(name, value);
            }
        }

        known[element] = look;
        return look;
    }

    public string ToCss()
    {
        var css = new StringBuilder();
        foreach (var (selector, declarations) in rules)
        {
            css.Append(selector.Text).Append('{').AppendJoin(';', declarations.Select(declaration => $"{declaration.Name}:{declaration.Value}")).Append('}');
        }

        return css.ToString();
    }
}
