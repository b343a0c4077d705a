namespace Doughwright.App.Desk.TheBook;

/// <summary>A copy of the book as the page names it.</summary>
/// <param name="When">Day and time.</param>
/// <param name="File">Name of the file in the folder of copies.</param>
internal sealed record CopyRow(string When, string File);
