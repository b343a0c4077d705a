using Doughwright.App.Desk.Asking;

namespace Doughwright.App.Desk.Preview;

/// <summary>Where the page for readers is looked at, and where it is to be had alone.</summary>
internal static class PageAddress
{
    public const string Route = "/recipes/{name}/page/file";

    /// <summary>Name in the address of one that is to be saved.</summary>
    public const string Save = "save";

    /// <summary>What an address may ask of a page: the kitchen it is for, and its measures.</summary>
    public static IReadOnlyList<string> Asks { get; } = [Question.Kitchen, .. Question.OfKitchen, Question.Measures];

    public static string Of(string recipe, Question question) => $"/recipes/{Uri.EscapeDataString(recipe)}/page{Only(question).Query()}";

    public static string Alone(string recipe, Question question) => $"/recipes/{Uri.EscapeDataString(recipe)}/page/file{Only(question).Query()}";

    public static string Saved(string recipe, Question question) => $"/recipes/{Uri.EscapeDataString(recipe)}/page/file{Only(question).With(Save, "1").Query()}";

    private static Question Only(Question question) => question.Only(question.Items.Where(item => Asks.Contains(item.Name)));
}
