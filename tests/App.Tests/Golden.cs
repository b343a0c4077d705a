namespace Doughwright.App.Tests;

/// <summary>
/// Compares a text with the one approved before, in tests/data/golden. What differs is written beside it as .received; ACCEPT=1 approves it.
/// </summary>
internal static class Golden
{
    public static void Check(string name, string text) => CheckFile(House.PathTo("tests", "data", "golden", name + ".approved.txt"), text);

    public static void CheckFile(string approved, string text)
    {
        var received = approved.Replace(".approved.txt", "", StringComparison.Ordinal) + ".received";
        if (Environment.GetEnvironmentVariable("ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(approved)!);
            File.WriteAllText(approved, text);
        }

        if (File.Exists(approved) && File.ReadAllText(approved).ReplaceLineEndings("\n") == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text);
        Assert.Fail($"{Path.GetFileName(approved)} differs; see {Path.GetFileName(received)} beside it. ACCEPT=1 approves it.\n{text}");
    }
}
