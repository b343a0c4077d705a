using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Sides;

/// <summary>One thing in which two recipes differ, as a baker compares. It carries values, not sentences.</summary>
/// <param name="First">In the first recipe: a quantity, a word, a list, or a value of the recipe; null where it has none.</param>
public sealed record RecipeDifference(Aspect Aspect, object? First, object? Second)
{
    /// <summary>Id of the part it is about; null where it is about none.</summary>
    public string? Part { get; init; }

    /// <summary>Id of the line in <see cref="Part"/>.</summary>
    public string? Line { get; init; }

    /// <summary>Id of the step.</summary>
    public string? Step { get; init; }

    /// <summary>Which item of a list without ids: a tool, an own ingredient; the name of a photo.</summary>
    public string? Item { get; init; }

    /// <summary>The two as figures of one unit; null where they are none, or one of them is not there.</summary>
    public SideNumber? FirstNumber => Numbers?.First;

    public SideNumber? SecondNumber => Numbers?.Second;

    /// <summary>Second less first, in the unit of both; null where there are no figures.</summary>
    public double? By => Numbers is { } numbers ? numbers.Second.Value - numbers.First.Value : null;

    /// <summary>The same seen from the other side.</summary>
    public RecipeDifference Turned => this with { First = Second, Second = First };

    /// <summary>Whether another difference is about the same thing, whatever its values.</summary>
    public bool IsAboutSame(RecipeDifference other) =>
        (Aspect, Part, Line, Step, Item) == (other.Aspect, other.Part, other.Line, other.Step, other.Item);

    private (SideNumber First, SideNumber Second)? Numbers => SideNumber.Both(First, Second);
}

/// <summary>How much of a line there is.</summary>
/// <param name="Mass">Null where it cannot be weighed.</param>
/// <param name="OfFlour">On all flour of the dough; null where there is none.</param>
/// <param name="Typed">As the author wrote it.</param>
public sealed record LineAmount(Mass? Mass, Percent? OfFlour, string Typed)
{
    internal static LineAmount Of(LineFormula line) => new(line.IsMassKnown ? line.Mass : null, line.OverallPercent, line.Source.Typed);
}
