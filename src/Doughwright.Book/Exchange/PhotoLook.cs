namespace Doughwright.Book.Exchange;

/// <summary>Looks at a photo that is to be taken in. The book knows bytes and hashes; what a picture is, only whoever can open one knows.</summary>
/// <param name="name">Of the file in the export.</param>
/// <returns>All that keeps it out; nothing for a photo as this program writes them.</returns>
public delegate IReadOnlyList<ExchangeFault> PhotoLook(string name, byte[] bytes);
