using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Asking;

/// <summary>What a value of an address is called where nobody types options: by its field, or by what it is where it has none.</summary>
internal static class FieldNames
{
    /// <summary>Before the name of an option.</summary>
    private const string Dashes = "--";

    public static string KeyOf(string name) => $"recipe.field.{name}";

    /// <returns>The name of an option such as "--air"; the option where it stands in no address.</returns>
    public static Func<string, string> Of(Words words) => option => option.StartsWith(Dashes, StringComparison.Ordinal) ? words.Find(KeyOf(option[Dashes.Length..])) ?? option : option;
}
