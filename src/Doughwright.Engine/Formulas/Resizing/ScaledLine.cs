using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>A line on its way from exact to written.</summary>
/// <param name="inside">Whether its part belongs to the dough, whose parts add up together.</param>
internal sealed class ScaledLine(Component component, Line source, double factor, bool inside)
{
    public Component Component { get; } = component;

    public Line Source { get; } = source;

    public bool Inside { get; } = inside;

    public Mass Before { get; } = source.Mass!.Value;

    public Mass Exact { get; } = source.Mass!.Value * factor;

    public LineForm Form { get; private set; }

    /// <summary>As written; null until it is rounded.</summary>
    public string? Typed { get; private set; }

    public Household? Household { get; private set; }

    public Mass After { get; private set; }

    /// <summary>Writes a mass; what is written is what counts.</summary>
    public void Write(string typed, LineForm form) => (Typed, Form, After) = (typed, form, QuantityText.TryMass(typed).Value ?? Exact);

    /// <summary>Writes something that says no mass by itself: a measure, or a number of pieces.</summary>
    public void Write(string typed, LineForm form, Household? household, Mass mass) => (Typed, Form, Household, After) = (typed, form, household, mass);

    public Line Line => Source with
    {
        Mass = After,
        Typed = Typed!,
        Household = Household,
        Weighed = Source.Weighed is { } weighed && Before > Mass.Zero && After != Before
            ? new(Tenths(weighed.RawPeeled * (After / Before)), Tenths(weighed.Cooked * (After / Before)))
            : Source.Weighed,
    };

    /// <summary>The two weighings tell a loss in cooking; a tenth of a gram of a potato is no loss.</summary>
    private static Mass Tenths(Mass mass) => mass.Grams < 10 ? mass : Mass.FromGrams(Math.Round(mass.Grams, 1));

    public ResizedLine Result => new(Component.Id, Source.Id, Source.Name, Before, Exact, After, Typed!, Form);
}
