namespace Doughwright.Engine.Tests.TextForm;

/// <summary>The texts of the repository, found from where the tests run.</summary>
internal static class Texts
{
    public static string Root { get; } = FindRoot();

    public static IEnumerable<string> Recipes => All("demo/recipes").Concat(All("tests/data/texts"));

    public static IEnumerable<string> Kitchens => All("demo/kitchens");

    /// <summary>Every text but the one made of faults.</summary>
    public static IEnumerable<string> Sound =>
        Recipes.Concat(Kitchens).Where(path => !path.Contains("twelve-faults", StringComparison.Ordinal));

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    public static string PotatoRolls => Read("demo/recipes/potato-rolls.yaml");

    /// <summary>The potato rolls with one piece of the text exchanged, which must be there once.</summary>
    public static string PotatoRollsWith(string piece, string instead)
    {
        var text = PotatoRolls;
        Assert.Equal(2, text.Split(piece).Length);
        return text.Replace(piece, instead);
    }

    public static IEnumerable<string> All(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.yaml")
            .Order(StringComparer.Ordinal)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Doughwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
