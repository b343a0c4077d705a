using System.Text.Json.Serialization;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Desk.Shelf;

/// <summary>What the shelf shows of a recipe, whatever the clock says. Times are minutes, unrounded.</summary>
internal sealed record KeptRow
{
    /// <summary>As the author wrote it; empty when the text has none.</summary>
    public required string Title { get; init; }

    /// <summary>Lines that were not understood: none where what is wrong is in no line. Null when all is understood; otherwise nothing below is known.</summary>
    public int? LinesNotUnderstood { get; init; }

    /// <summary>What it makes, of which parts, in words.</summary>
    public string Facts { get; init; } = "";

    public IReadOnlyList<KeptCount> Findings { get; init; } = [];

    /// <summary>From the first hand to the end; null when that cannot be told.</summary>
    public double? Total { get; init; }

    /// <summary>Null where no step is there.</summary>
    public double? Hands { get; init; }

    /// <summary>Height of a gram at which its strip just fills a row.</summary>
    public double MostPixelsPerGram { get; init; } = 1;

    [JsonIgnore]
    public bool HasCourse => Total is not null;

    /// <summary>Whether a finding of it says that something is wrong: a weight may then be a slip.</summary>
    [JsonIgnore]
    public bool IsWrong => Findings.Any(count => count.Mark == nameof(MarkShape.Wrong));

    /// <summary>What is done before the first hand, the earliest first.</summary>
    public IReadOnlyList<KeptAhead> Ahead { get; init; } = [];
}

/// <summary>How many findings have a mark.</summary>
internal sealed record KeptCount(string Mark, int Count);

/// <summary>A step before the first hand.</summary>
/// <param name="Minutes">So long before it.</param>
internal sealed record KeptAhead(string Name, double Minutes);

/// <summary>Rows as JSON.</summary>
[JsonSerializable(typeof(KeptRow))]
[JsonSourceGenerationOptions(RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
internal sealed partial class KeptRowJson : JsonSerializerContext;
