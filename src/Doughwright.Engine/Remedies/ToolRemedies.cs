namespace Doughwright.Engine.Remedies;

/// <summary>A list of tools that leaves one out, or holds one too many.</summary>
internal static class ToolRemedies
{
    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("tool-not-listed", NotListed),
        new("tool-not-used", NotUsed),
    ];

    /// <summary>Where any of several will do, each is a remedy.</summary>
    private static IEnumerable<Remedy> NotListed(Found found) =>
        from tool in (found.Word("tool") ?? "").Split(" or ", StringSplitOptions.RemoveEmptyEntries)
        select found.Remedy(Verbs.AddTool, recipe => recipe with { Tools = [.. recipe.Tools ?? [], tool] }, ("tool", tool));

    private static IEnumerable<Remedy> NotUsed(Found found) => found.Word("tool") is not { } tool ? [] :
    [
        found.Remedy(Verbs.DropTool, recipe => recipe with { Tools = [.. (recipe.Tools ?? []).Where(listed => listed != tool)] }, ("tool", tool)),
    ];
}
