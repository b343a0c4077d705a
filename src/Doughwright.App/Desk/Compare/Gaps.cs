namespace Doughwright.App.Desk.Compare;

/// <summary>A sentence whose gaps are filled by fields.</summary>
internal static class Gaps
{
    /// <summary>Words and names of gaps in turn: "Set {first} beside {second}." is "Set ", "first", " beside ", "second", ".".</summary>
    public static IReadOnlyList<string> Cut(string sentence) => sentence.Split('{', '}');
}
