using Doughwright.Engine.Recipes.Notes;

namespace Doughwright.Publishing.Notes;

/// <summary>A note of the book at a step that links to it.</summary>
/// <param name="Step">Id of the step.</param>
/// <param name="Name">What the note is called in the book.</param>
/// <param name="Note">Null when its text cannot be shown.</param>
internal sealed record LinkedNote(string Step, string Name, Note? Note);
