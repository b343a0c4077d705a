using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Notes;

/// <summary>Where a note is read and written, and in which recipe.</summary>
internal static class NoteAddress
{
    public const string All = "/notes";

    /// <summary>The recipe whose values stand in it.</summary>
    public const string Recipe = "recipe";

    /// <summary>The step of that recipe at which it stands.</summary>
    public const string Step = "step";

    public static string Of(string name, string? recipe = null, string? step = null)
    {
        var address = $"{All}/{Uri.EscapeDataString(name)}";
        address = recipe is null ? address : QueryHelpers.AddQueryString(address, Recipe, recipe);
        return step is null ? address : QueryHelpers.AddQueryString(address, Step, step);
    }
}
