namespace Doughwright.App.Desk.Shelf;

/// <summary>Something of a folder that was there before the book and could not be laid into it.</summary>
/// <param name="File">Where it lies within the folder, with slashes.</param>
/// <param name="Name">Of the text.</param>
/// <param name="Trouble">Why it could not; null when it could be read by now.</param>
internal sealed record LeftText(string File, string Name, TextTrouble? Trouble);
