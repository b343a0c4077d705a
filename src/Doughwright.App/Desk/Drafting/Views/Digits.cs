using System.Globalization;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>Numbers as a program reads them, and as a person types them: the shortest digits that give the same number back.</summary>
internal static class Digits
{
    public static string Of(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
