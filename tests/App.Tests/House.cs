namespace Doughwright.App.Tests;

/// <summary>Files of the house, wherever the tests run.</summary>
internal static class House
{
    public static string Root { get; } = FindRoot();

    public static string PathTo(params string[] parts) => Path.Join([Root, .. parts]);

    public static string PotatoRolls => PathTo("demo", "recipes", "potato-rolls.yaml");

    public static string Demo(string name) => PathTo("demo", "recipes", name);

    public static string Text(string name) => PathTo("tests", "data", "texts", name);

    /// <summary>All source of a project, without what the build made.</summary>
    public static IEnumerable<string> Sources(string project) => Directory
        .EnumerateFiles(PathTo("src", project), "*.cs", SearchOption.AllDirectories)
        .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal);

    /// <summary>The source of everything that speaks: program and publishing, components included.</summary>
    public static IEnumerable<string> Speaking => Sources("Doughwright.App").Concat(Sources("Doughwright.Publishing")).Concat(Directory
        .EnumerateFiles(PathTo("src", "Doughwright.App"), "*.razor", SearchOption.AllDirectories));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Join(folder.FullName, "Doughwright.slnx")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The tests run outside the house.");
        }

        return folder.FullName;
    }
}
