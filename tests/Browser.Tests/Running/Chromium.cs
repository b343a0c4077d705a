namespace Doughwright.Browser.Tests.Running;

/// <summary>The browser of this machine. None is ever fetched from elsewhere.</summary>
internal static class Chromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    /// <summary>Where it lies.</summary>
    /// <exception cref="InvalidOperationException">There is none: says what to install.</exception>
    public static string Path => Given() ?? InThePath() ?? throw new InvalidOperationException(
        $"These tests need a browser: none of {string.Join(", ", Names)} is in PATH. Install one (Debian, Ubuntu: apt-get install chromium), "
        + "or name its program in the variable CHROMIUM.");

    private static string? Given() => Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } given ? given : null;

    private static string? InThePath() => (
        from name in Names
        from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        let file = System.IO.Path.Join(folder, name)
        where File.Exists(file)
        select file).FirstOrDefault();
}
