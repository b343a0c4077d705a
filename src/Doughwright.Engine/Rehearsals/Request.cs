using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Sections;

namespace Doughwright.Engine.Rehearsals;

/// <summary>What is asked of a rehearsal beside the recipe. Nothing set means: at home, as written.</summary>
public sealed record Request
{
    public static Request Home { get; } = new();

    /// <summary>The kitchen to rehearse in; null is the recipe's home.</summary>
    public Kitchen? Kitchen { get; init; }

    /// <summary>
    /// Lines that go in at another temperature than the text says: by line id for that line in every part, or by <see cref="LineOf"/> for one
    /// part only. A part made beforehand goes by its own id.
    /// </summary>
    public IReadOnlyDictionary<string, Temperature> At { get; init; } = new Dictionary<string, Temperature>();

    /// <summary>Whether a step is done in another vessel or another way than the author's.</summary>
    internal bool Changes(string step) => Bowls.ContainsKey(step) || Ways.ContainsKey(step) || Variants.ContainsKey(step);

    /// <summary>Names one line of one part.</summary>
    public static string LineOf(string component, string line) => $"{component}/{line}";

    /// <summary>Temperature of what the text calls boiling, when it is poured cooler.</summary>
    public Temperature? Pour { get; init; }

    /// <summary>Other vessels, by step id.</summary>
    public IReadOnlyDictionary<string, Vessel> Bowls { get; init; } = new Dictionary<string, Vessel>();

    /// <summary>Variants that the text has, by step id: the id of the variant. One that the step does not have changes nothing.</summary>
    public IReadOnlyDictionary<string, string> Variants { get; init; } = new Dictionary<string, string>();

    /// <summary>Other ways of mixing, by step id. They go before a variant.</summary>
    public IReadOnlyDictionary<string, MixingWay> Ways { get; init; } = new Dictionary<string, MixingWay>();

    /// <summary>Weighings before and after cooking, by line id.</summary>
    public IReadOnlyDictionary<string, Weighed> Weighed { get; init; } = new Dictionary<string, Weighed>();

    /// <summary>Dough temperature asked for; the <see cref="Free"/> lines are solved for it.</summary>
    public Temperature? Dough { get; init; }

    public IReadOnlyList<string> Free { get; init; } = [];

    /// <summary>
    /// What bakes take over a section through their pieces, by step id. A bake that the author did not time here takes so long; its range moves
    /// with it. Set by <see cref="Rehearser.OverSections"/>.
    /// </summary>
    public IReadOnlyDictionary<string, SectionMinutes> SectionMinutes { get; init; } = new Dictionary<string, SectionMinutes>();
}
