using System.Collections.Concurrent;

namespace Doughwright.App.Desk.Drafting;

/// <summary>Lines that were typed and not added when somebody went to write their ingredient down. They wait, as they were typed, for whoever comes back.</summary>
internal sealed class LeftLines
{
    private readonly ConcurrentDictionary<(string Recipe, string Part), string> all = new();

    /// <summary>Empty where none waits.</summary>
    /// <param name="recipe">Name in the book.</param>
    /// <param name="part">Id of the part that the line goes into.</param>
    public string Of(string recipe, string part) => all.GetValueOrDefault((recipe, part), "");

    public void Leave(string recipe, string part, string typed) => all[(recipe, part)] = typed;

    /// <summary>The line is in its field again, where something is done with it.</summary>
    public void LetGo(string recipe, string part) => all.TryRemove((recipe, part), out _);
}
