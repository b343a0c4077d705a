using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Running;

/// <summary>How a page is looked at.</summary>
/// <param name="Width">Of the window, in CSS pixels.</param>
/// <param name="Dark">Whether the reader asks for a dark page.</param>
/// <param name="Script">Whether the browser runs scripts.</param>
internal sealed record View(int Width = 1280, bool Dark = false, bool Script = true)
{
    public static readonly IReadOnlyList<int> Widths = [1280, 768, 390];

    public ColorScheme Scheme => Dark ? ColorScheme.Dark : ColorScheme.Light;

    public override string ToString() => $"{Width} px, {(Dark ? "dark" : "light")}";
}
