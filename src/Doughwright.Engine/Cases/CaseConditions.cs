using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Phrase = Doughwright.Engine.TextForm.Phrase;

namespace Doughwright.Engine.Cases;

/// <summary>The conditions of a case as its kind reads them. What is missing or wrong is told, and the rest is read all the same.</summary>
internal sealed class CaseConditions(Section section, Position position)
{
    private static readonly Limit<Temperature> AnyAir = new("case-air-outside-limits", Celsius(Dimension.Air.Low), Celsius(Dimension.Air.High));

    public bool Has(string key) => section.Has(key);

    /// <summary>A figure that may be left out.</summary>
    public double? May(string key, Dimension dimension) => section.Words(key) is { } words ? dimension.Read(words)?.Value : null;

    /// <summary>A figure that must be there.</summary>
    public double? Need(string key, Dimension dimension) => IsThere(key) ? May(key, dimension) : null;

    /// <summary>Air over the time of the case.</summary>
    public AirProfile? NeedAir(string key) => IsThere(key) && section.Words(key) is { } words ? KitchenSection.ReadAir(words, AnyAir) : null;

    public T? MayBe<T>(string key) where T : struct, Enum => section.Words(key)?.Word<T>();

    /// <summary>What a grammar of recipes and kitchens reads, or null: not there, or told.</summary>
    public T? MayRead<T>(string key, Func<Phrase, T?> grammar) where T : class => section.Words(key) is { } words ? grammar(words) : null;

    /// <inheritdoc cref="MayRead{T}(string, Func{Phrase, T})"/>
    public T? MayReadValue<T>(string key, Func<Phrase, T?> grammar) where T : struct => section.Words(key) is { } words ? grammar(words) : null;

    public T? NeedWord<T>(string key) where T : struct, Enum => IsThere(key) ? MayBe<T>(key) : null;

    public Vessel? MayVessel(string key) => section.Words(key) is { } words ? StepGrammar.Vessel(words, KitchenVessels.Unsaid) : null;

    public MixingWay? MayWay(string key) => section.Words(key) is { } words ? StepGrammar.Way(words) : null;

    public string? MayWords(string key) => section.Words(key)?.Text;

    public int? MayCount(string key, Limit<int> limit) => section.Words(key)?.Count(limit);

    /// <summary>What a part consists of, line by line as in a recipe; null, and told, when it is not there or an ingredient is not known.</summary>
    public Component? NeedLines(string key, ComponentKind kind) => IsThere(key) ? MayLines(key, kind) : null;

    public Component? MayLines(string key, ComponentKind kind)
    {
        if (section.Entry(key) is not { } entry)
        {
            return null;
        }

        var part = entry with { Key = EnumWords<ComponentKind>.Of(kind) };
        var parts = PartsSection.Read(new([part], entry.KeyPosition), section.Place, section.Log, Larder.Shipped);
        if (parts.Components is not [{ Lines.Count: > 0 } component])
        {
            return null;
        }

        var unknown = component.Lines.Where(line => Larder.Shipped.Find(line.Name, line.Conditions, null).Ingredient is null).ToArray();
        foreach (var line in unknown)
        {
            section.Log.Wrong(CaseFaults.IngredientUnknown, $"{section.Place}.{key}.{line.Id}", line.Position, ("name", line.Name));
        }

        return unknown.Length == 0 ? component : null;
    }

    /// <summary>Tells that one of some keys is needed and none is there.</summary>
    public void TellOneOf(params string[] keys) =>
        section.Log.Wrong(CaseFaults.OneOfMissing, section.Place, position, ("keys", string.Join(", ", keys)));

    /// <summary>Tells that what several keys say cannot be together.</summary>
    public void Tell(string kind, string key, params (string, object)[] arguments) => section.Log.Wrong(kind, section.PlaceOf(key), position, arguments);

    /// <summary>Whether two keys stand side by side that say the same thing in two ways; told then.</summary>
    public bool Clash(string key, params string[] others)
    {
        var clashing = others.Where(section.Has).ToArray();
        if (!section.Has(key) || clashing.Length == 0)
        {
            return false;
        }

        section.Log.Wrong(CaseFaults.NotTogether, section.PlaceOf(key), section.Entry(key)!.KeyPosition, ("key", key), ("others", string.Join(", ", clashing)));
        return true;
    }

    private bool IsThere(string key)
    {
        if (section.Has(key))
        {
            return true;
        }

        section.Log.Wrong(CaseFaults.KeyMissing, section.Place, position, ("key", key));
        return false;
    }

    private static Temperature Celsius(double celsius) => Temperature.FromCelsius(celsius);
}
