using Doughwright.App.Desk.Asking;

namespace Doughwright.App.Desk.Recipes.Telling;

/// <summary>A value of a sentence that a person sets.</summary>
/// <param name="Option">Name of the option it sets.</param>
/// <param name="Label">What it is, for those who hear the page.</param>
/// <param name="Text">What stands in it.</param>
/// <param name="Unit">Stands behind it; empty for none.</param>
public sealed record Field(string Option, string Label, string Text, string Unit)
{
    /// <summary>What can be picked; empty for a field to type into.</summary>
    public IReadOnlyList<Choice> Choices { get; init; } = [];

    public Refusal? Refusal { get; init; }

    /// <summary>Wider than a temperature.</summary>
    public bool Wide { get; init; }

    public string Id => "field-" + Option;

    /// <summary>Where its refusal is told.</summary>
    public string ReasonId => "refused-" + Option;
}

/// <summary>One thing that can be picked.</summary>
public sealed record Choice(string Value, string Text);
