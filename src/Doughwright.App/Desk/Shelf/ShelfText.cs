namespace Doughwright.App.Desk.Shelf;

/// <summary>What lies in the folder under the name of a text.</summary>
/// <param name="Name">Name of the file without its ending.</param>
/// <param name="Trouble">Why it cannot be read; null when it seems that it can.</param>
internal sealed record ShelfText(string Name, TextTrouble? Trouble);
