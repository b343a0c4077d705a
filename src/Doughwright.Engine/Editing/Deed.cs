namespace Doughwright.Engine.Editing;

/// <summary>What was done to a recipe. It carries arguments, not a sentence: the words come from the resources of the program that says it.</summary>
/// <param name="Kind">A lower-case word with hyphens: "line-amount".</param>
/// <param name="Arguments">Values the sentence needs, by name.</param>
public sealed record Deed(string Kind, IReadOnlyDictionary<string, object> Arguments)
{
    internal static Deed Of(string kind, params (string Name, object Value)[] arguments) =>
        new(kind, arguments.ToDictionary(argument => argument.Name, argument => argument.Value));
}
