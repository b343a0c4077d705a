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

    /// <summary>
    /// The text with the remedy carried out. A change of the recipe gives the canonical text, with its comments where they stood.
    /// </summary>
    /// <exception cref="InvalidOperationException">The text is not the one the remedy was offered for: there is no recipe in it.</exception>
    public string CarryOut(string text)
    {
        if (Edit is { } edit)
        {
            return edit(text);
        }

        var reading = RecipeText.Read(text);
        return reading.Recipe is { } recipe
            ? RecipeText.Write(Change!(recipe), reading.Document).Text
            : throw new InvalidOperationException("There is no recipe in this text.");
    }
}
