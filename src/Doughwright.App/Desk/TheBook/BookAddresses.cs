namespace Doughwright.App.Desk.TheBook;

/// <summary>Where the desk shows the book as a whole, and gives it out.</summary>
internal static class BookAddresses
{
    public const string Page = "/book";

    public const string Export = "/book/export";

    /// <summary>The page, where it tells what was refused.</summary>
    /// <param name="key">By which it was laid down.</param>
    public static string Refused(string key) => $"{Page}?refused={key}";
}
