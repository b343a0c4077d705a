using System.Globalization;

namespace Doughwright.Book.Papers;

/// <summary>Instants as they stand in the file: UTC, to the millisecond, in the order of letters.</summary>
internal static class Instants
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    public static string Write(DateTimeOffset instant) => instant.UtcDateTime.ToString(Form, CultureInfo.InvariantCulture);

    public static DateTimeOffset Read(string text) =>
        DateTimeOffset.ParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);
}
