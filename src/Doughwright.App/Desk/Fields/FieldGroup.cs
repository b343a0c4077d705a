namespace Doughwright.App.Desk.Fields;

/// <summary>Fields of a form that belong together.</summary>
/// <param name="Name">By which its words are found.</param>
/// <param name="Keys">Of the text, in the order in which they are asked.</param>
internal sealed record FieldGroup(string Name, IReadOnlyList<string> Keys);
