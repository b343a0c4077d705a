using System.Reflection;
using System.Text.RegularExpressions;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.House;

/// <summary>The files of the house and what stands in them, wherever the tests run.</summary>
internal static partial class Tree
{
    public static string Root { get; } = FindRoot();

    public static Assembly Engine { get; } = typeof(Mass).Assembly;

    public static string PathTo(params string[] parts) => Path.Join([Root, .. parts]);

    /// <summary>Source files below src, without what the build made.</summary>
    public static IReadOnlyList<string> Sources(string project = "") =>
    [
        .. Directory.EnumerateFiles(PathTo("src", project), "*.cs", SearchOption.AllDirectories)
            .Where(file => !Built().IsMatch(file))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The room a file of the engine stands in.</summary>
    public static string RoomOf(string file) => Path.GetRelativePath(PathTo("src", "Doughwright.Engine"), file).Split(Path.DirectorySeparatorChar)[0];

    /// <summary>What a file says to the compiler: no comments, no text in quotation marks.</summary>
    public static string Code(string file) => QuotedOrComment().Replace(File.ReadAllText(file), match => match.Value.StartsWith('/') ? "" : "\"\"");

    /// <summary>Types of the engine that stand in its source, without nested ones and what the compiler adds.</summary>
    public static IEnumerable<Type> EngineTypes() => Engine.GetTypes()
        .Where(type => !type.IsNested && type.Namespace?.StartsWith("Doughwright.Engine", StringComparison.Ordinal) == true && !type.Name.Contains('<'));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Join(folder.FullName, "Doughwright.slnx")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The tests run outside the house.");
        }

        return folder.FullName;
    }

    [GeneratedRegex(@"[\\/](obj|bin)[\\/]")]
    private static partial Regex Built();

    [GeneratedRegex("""
        //[^\n]*|/\*.*?\*/|\x22{3}.*?\x22{3}|\$?"(?:[^"\\\n]|\\.)*"
        """, RegexOptions.Singleline)]
    private static partial Regex QuotedOrComment();
}
