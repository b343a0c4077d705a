namespace Doughwright.App.Tests.Hostile;

/// <summary>A recipe whose words mean harm.</summary>
internal static class HostileRecipe
{
    /// <summary>The potato rolls with the prose in every place that takes free words.</summary>
    public static string With(string prose)
    {
        var quoted = '"' + prose.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + '"';
        return File.ReadAllText(House.PotatoRolls)
            .Replace("title: Potato rolls", $"title: {quoted}", StringComparison.Ordinal)
            .Replace("name: Ropewalk, winter term", $"name: {quoted}", StringComparison.Ordinal)
            .Replace("name: Mix by hand", $"name: {quoted}", StringComparison.Ordinal)
            .Replace("name: Final proof", $"name: {quoted}", StringComparison.Ordinal)
            .Replace("cue: golden all over", $"cue: {quoted}", StringComparison.Ordinal)
            .Replace("words: Mash it with", $"words: |\n      {prose}\n      Mash it with", StringComparison.Ordinal)
            .Replace("  - tape\n", $"  - {quoted}\n", StringComparison.Ordinal);
    }
}
