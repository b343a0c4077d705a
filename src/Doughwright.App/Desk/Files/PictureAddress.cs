using Doughwright.App.Desk.Asking;
using Doughwright.Publishing.Pictures.Files;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Files;

/// <summary>Where a picture of a recipe is to be had as a file. It carries the options of "picture" without their dashes, and the question of its page.</summary>
internal static class PictureAddress
{
    public const string Route = "/recipes/{name}/picture";
    public const string Of = "of";
    public const string Step = "step";
    public const string As = "as";

    /// <summary>Options of "picture" that are none of "rehearse".</summary>
    public static IReadOnlyList<string> Own { get; } = [Of, Step, As, "ground", "width"];

    /// <summary>The two files of a picture.</summary>
    /// <param name="step">Of which step; null for a picture of the whole.</param>
    /// <param name="what">What it shows, in words.</param>
    public static SaveView Files(string recipe, PictureKind kind, string? step, Question question, string what) => new(
        what,
        Address(recipe, kind, step, "svg", question),
        Address(recipe, kind, step, "png", question));

    /// <summary>What the file is called: "potato-rolls-rise-bulk.svg".</summary>
    public static string FileName(string recipe, string kind, string? step, bool isPng) =>
        $"{recipe}-{kind}{(step is null ? "" : "-" + step)}.{(isPng ? "png" : "svg")}";

    private static string Address(string recipe, PictureKind kind, string? step, string form, Question question)
    {
        var asked = question.With(Of, Voice.Kebab(kind.ToString())).With(As, form);
        return $"/recipes/{Uri.EscapeDataString(recipe)}/picture{(step is null ? asked : asked.With(Step, step)).Query()}";
    }
}

/// <summary>Links that save a picture.</summary>
/// <param name="What">What it shows, for those who hear the page.</param>
public sealed record SaveView(string What, string Svg, string Png);
