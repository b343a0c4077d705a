using Doughwright.Book.Papers;

namespace Doughwright.App.Desk.Drafting;

/// <summary>Two windows wrote from one state. Nothing of either is lost until the author settles it.</summary>
/// <param name="Field">Where it was typed.</param>
/// <param name="Mine">The text that could not be written.</param>
/// <param name="MyDeed">What was done here, in words.</param>
/// <param name="From">The state that it was written from.</param>
/// <param name="Other">The text that is in the book; null when the recipe was taken off the shelf.</param>
public sealed record Clash(string Field, string Mine, string MyDeed, long From, Paper? Other, string OtherText);
