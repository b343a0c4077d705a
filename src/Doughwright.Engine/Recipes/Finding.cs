namespace Doughwright.Engine.Recipes;

/// <summary>How serious a finding is, the mildest first.</summary>
public enum Grade
{
    Hint,
    Warning,
    Error,
}

/// <summary>
/// Something wrong, missing or risky in a recipe. It carries arguments, not sentences: the words come from the resources of the program
/// that shows it, under the finding's kind.
/// </summary>
public sealed record Finding
{
    /// <summary>A lower-case word with hyphens, for example "bowl-not-said". The list is docs/findings.md.</summary>
    public required string Kind { get; init; }

    public required Grade Grade { get; init; }

    /// <summary>Whether somebody can be hurt. Such a finding cannot be accepted away.</summary>
    public bool Safety { get; init; }

    /// <summary>Where in the recipe, for example "steps.scald" or "parts.dough.butter". Empty for the recipe as a whole.</summary>
    public required string Place { get; init; }

    public Position Position { get; init; }

    /// <summary>The line of the text as it stands there, when there is a text.</summary>
    public string? Quoted { get; init; }

    /// <summary>True when the text at this place was not understood, so that something the author wrote is not in the recipe.</summary>
    public bool NotUnderstood { get; init; }

    /// <summary>Values the sentence needs: quantities, counts or words from the text, by name.</summary>
    public IReadOnlyDictionary<string, object> Arguments { get; init; } = new Dictionary<string, object>();

    /// <summary>Kind and place: the same finding keeps it as long as the place stands.</summary>
    public string Id => Place.Length == 0 ? Kind : $"{Kind}@{Place}";
}
