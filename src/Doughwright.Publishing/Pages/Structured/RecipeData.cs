using System.Text.Json.Serialization;

namespace Doughwright.Publishing.Pages.Structured;

/// <summary>A recipe in the words of schema.org (release 30.0). What is not known is left out.</summary>
internal sealed record RecipeData
{
    [JsonPropertyName("@context")]
    public string Context { get; } = "https://schema.org";

    [JsonPropertyName("@type")]
    public string Type { get; } = "Recipe";

    [JsonPropertyName("name")]
    public required string Name { get; init; }

    [JsonPropertyName("description")]
    public string? Description { get; init; }

    [JsonPropertyName("image")]
    public ImageData? Image { get; init; }

    [JsonPropertyName("recipeYield")]
    public string? Yield { get; init; }

    /// <summary>ISO 8601. One figure, because the vocabulary knows no ranges.</summary>
    [JsonPropertyName("totalTime")]
    public string? TotalTime { get; init; }

    [JsonPropertyName("recipeIngredient")]
    public required IReadOnlyList<string> Ingredients { get; init; }

    [JsonPropertyName("tool")]
    public IReadOnlyList<ToolData>? Tools { get; init; }

    [JsonPropertyName("recipeInstructions")]
    public required IReadOnlyList<StepData> Steps { get; init; }
}

/// <summary>A step of the method.</summary>
internal sealed record StepData
{
    [JsonPropertyName("@type")]
    public string Type { get; } = "HowToStep";

    [JsonPropertyName("name")]
    public required string Name { get; init; }

    /// <summary>Never empty.</summary>
    [JsonPropertyName("text")]
    public required string Text { get; init; }

    /// <summary>The step on its own page.</summary>
    [JsonPropertyName("url")]
    public required string Url { get; init; }
}

/// <summary>A tool.</summary>
internal sealed record ToolData
{
    [JsonPropertyName("@type")]
    public string Type { get; } = "HowToTool";

    [JsonPropertyName("name")]
    public required string Name { get; init; }
}

/// <summary>A picture of the recipe that stands in the page itself.</summary>
internal sealed record ImageData
{
    [JsonPropertyName("@type")]
    public string Type { get; } = "ImageObject";

    /// <summary>Within the page, whose own address is not known when it is made.</summary>
    [JsonPropertyName("url")]
    public required string Url { get; init; }

    [JsonPropertyName("encodingFormat")]
    public string EncodingFormat { get; } = "image/svg+xml";

    /// <summary>Says that it is a drawing.</summary>
    [JsonPropertyName("caption")]
    public required string Caption { get; init; }
}
