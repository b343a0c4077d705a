using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>What parts and their lines are compared by, beside how much there is of a line.</summary>
internal static class PartTraits
{
    public static IReadOnlyList<Trait<Component>> OfPart { get; } =
    [
        new(Aspect.PartName, part => part.Name, (from, into) => into with { Name = from.Name }),
        new(Aspect.PartKind, part => part.Kind, (from, into) => into with { Kind = from.Kind }),
        new(Aspect.PartBase, part => part.Base, (from, into) => into with { Base = from.Base }),
    ];

    public static IReadOnlyList<Trait<Line>> OfLine { get; } =
    [
        new(Aspect.LineName, line => line.Name, (from, into) => into with { Name = from.Name }),
        new(Aspect.LineUses, line => line.Uses, (from, into) => into with { Uses = from.Uses }),
        new(Aspect.Conditions, line => line.Conditions, (from, into) => into with { Conditions = from.Conditions }),
        new(Aspect.Warmth, line => line.Warmth, (from, into) => into with { Warmth = from.Warmth }),
        new(Aspect.CountsAs, line => line.CountsAs, (from, into) => into with { CountsAs = from.CountsAs }),
        new(Aspect.Weighed, line => line.Weighed, (from, into) => into with { Weighed = from.Weighed }),
    ];

    /// <summary>How much there is of a line, as it was typed.</summary>
    public static Line TakeAmount(Line from, Line into) => into with { Mass = from.Mass, Typed = from.Typed, Household = from.Household };
}
