namespace Doughwright.Engine.Sides;

/// <summary>One property that two things are compared by, and how it is taken over from one into the other.</summary>
/// <param name="Take">From the first into the second; gives the second changed.</param>
internal sealed record Trait<T>(Aspect Aspect, Func<T, object?> Of, Func<T, T, T> Take)
{
    /// <summary>The difference of two things in this; null where they are alike.</summary>
    public RecipeDifference? Between(T first, T second) =>
        Of(first) is var one && Of(second) is var other && Alikeness.Of(one, other) ? null : new(Aspect, one, other);
}
