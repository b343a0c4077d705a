using System.Text.Json.Nodes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Publishing.Wording;

/// <summary>Short names of the sources that the engine's figures rest on: who and when, the title where nobody is named.</summary>
internal static class SourceNames
{
    private static readonly Lazy<IReadOnlyDictionary<string, JsonNode>> All = new(Read);

    /// <summary>"L. Rosso and others, 1995"; "our own derivation" for what is this project's own.</summary>
    /// <param name="id">As the engine gives it.</param>
    public static string Of(string id, Voice voice)
    {
        var source = All.Value[id];
        var authors = (string?)source["authors"] ?? "";
        return authors is "this project" or "Doughwright" ? voice.Words["recipe.source-own"]
            : authors.Length == 0 ? (string)source["title"]!
            : (int?)source["year"] is { } year ? voice.Say("recipe.source-named", ("authors", authors), ("year", year.ToString(System.Globalization.CultureInfo.InvariantCulture)))
            : authors;
    }

    private static Dictionary<string, JsonNode> Read()
    {
        var engine = typeof(Reason).Assembly;
        return EmbeddedFile.Under(engine, "sources.")
            .SelectMany(name => JsonNode.Parse(EmbeddedFile.Bytes(engine, name))!.AsArray())
            .ToDictionary(source => (string)source!["id"]!, source => source!);
    }
}
