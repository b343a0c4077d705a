using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Remedies;

/// <summary>A way out of a finding that can be carried out for the author: a change of the recipe, or of the text where a line was not understood.</summary>
public sealed record Remedy
{
    /// <summary>The finding it is a way out of.</summary>
    public required string FindingId { get; init; }

    /// <summary>What is done, as a word: "add-tool". Its words are in the resources, under "remedy.add-tool".</summary>
    public required string Verb { get; init; }

    /// <summary>Which of several with the same verb it is, from 1.</summary>
    public int Choice { get; init; } = 1;

    /// <summary>Values the words need.</summary>
    public IReadOnlyDictionary<string, object> Arguments { get; init; } = new Dictionary<string, object>();

    /// <summary>The finding and what is done: the same remedy keeps it as long as the place stands.</summary>
    public string Id => Choice == 1 ? $"{FindingId}/{Verb}" : $"{FindingId}/{Verb}-{Choice}";

    /// <summary>The change of the recipe; null for one that changes the text.</summary>
    public Func<Recipe, Recipe>? Change { get; init; }

    /// <summary>The change of the text, where a line was not understood; null for one that changes the recipe.</summary>
    public Func<string, string>? Edit { get; init; }

    /// <summary>The text with the remedy carried out: lines it does not touch stay byte for byte.</summary>
    /// <exception cref="InvalidOperationException">The text is not the one the remedy was offered for: there is no recipe in it.</exception>
    public string CarryOut(string text) => Edit is { } edit ? edit(text) : RecipeText.Change(text, Change!).Text;
}
