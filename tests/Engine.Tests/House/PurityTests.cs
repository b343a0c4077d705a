using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Xml.Linq;

namespace Doughwright.Engine.Tests.House;

/// <summary>The engine is pure: no packages, no files, no web, no clock, no platform transcendentals.</summary>
public class PurityTests
{
    private static readonly string Project = Tree.PathTo("src", "Doughwright.Engine", "Doughwright.Engine.csproj");

    [Fact]
    public void Engine_ReferencesTheRuntimeOnly()
    {
        var references = Tree.Engine.GetReferencedAssemblies().Select(name => name.Name!).ToList();
        Assert.All(references, name => Assert.StartsWith("System.", name, StringComparison.Ordinal));
        Assert.DoesNotContain(references, name => name.StartsWith("System.Net", StringComparison.Ordinal) || name is "System.Console" or "System.Diagnostics.Process");
    }

    [Fact]
    public void Engine_HasNoPackageButItsAnalyser()
    {
        var package = Assert.Single(XDocument.Load(Project).Descendants("PackageReference"));
        Assert.Equal("Microsoft.CodeAnalysis.BannedApiAnalyzers", package.Attribute("Include")?.Value);
        Assert.Equal("all", package.Attribute("PrivateAssets")?.Value);
    }

    [Fact]
    public void BannedList_IsGivenToTheAnalyser_AndBreaksTheBuild()
    {
        Assert.Contains(XDocument.Load(Project).Descendants("AdditionalFiles"), file => file.Attribute("Include")?.Value == "BannedSymbols.txt");
        Assert.Contains("dotnet_diagnostic.RS0030.severity = error", File.ReadAllText(Tree.PathTo(".editorconfig")), StringComparison.Ordinal);
        Assert.DoesNotContain(Tree.Sources("Doughwright.Engine"), file => File.ReadAllText(file).Contains("RS0030", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("System.Math.Exp")]
    [InlineData("System.Math.Pow")]
    [InlineData("System.Math.Sin")]
    [InlineData("System.IO.File")]
    [InlineData("System.IO.FileStream")]
    [InlineData("System.Net")]
    [InlineData("System.Random")]
    [InlineData("System.DateTime")]
    [InlineData("System.Globalization.CultureInfo.CurrentCulture")]
    public void BannedList_Names(string symbol) => Assert.Contains(Banned(), name => name.Split('/')[0] == symbol);

    /// <summary>The list once more, on what was compiled: holds also if somebody turns the analyser off.</summary>
    [Fact]
    public void CompiledEngine_UsesNothingThatIsBanned()
    {
        var used = Used();
        Assert.Contains("System.Math.Sqrt/1", used);
        var found = Banned().Intersect(used).ToList();
        Assert.Empty(found);
        Assert.DoesNotContain(used, name => name.StartsWith("System.Net.", StringComparison.Ordinal));
    }

    /// <summary>Banned symbols without the letter before; a method with the number of its arguments, a property as its getter is compiled.</summary>
    private static HashSet<string> Banned() =>
    [
        .. from line in File.ReadAllLines(Tree.PathTo("src", "Doughwright.Engine", "BannedSymbols.txt"))
           where line.Length > 0
           from name in Compiled(line[0], line[2..line.IndexOf(';', StringComparison.Ordinal)])
           select name,
    ];

    private static string[] Compiled(char kind, string name)
    {
        var bare = name.Split('(')[0];
        return kind switch
        {
            'M' => [$"{bare}/{(name.Contains('(') ? name.Split(',').Length : 0)}"],
            'P' => [name, name.Insert(name.LastIndexOf('.') + 1, "get_") + "/0"],
            _ => [name],
        };
    }

    /// <summary>Types and members outside the engine that its machine code names.</summary>
    private static HashSet<string> Used()
    {
        using var file = new PEReader(File.OpenRead(Tree.Engine.Location));
        var metadata = file.GetMetadataReader();
        HashSet<string> used = [];
        foreach (var handle in metadata.MemberReferences)
        {
            var member = metadata.GetMemberReference(handle);
            if (member.Parent.Kind != HandleKind.TypeReference)
            {
                continue;
            }

            var type = metadata.GetTypeReference((TypeReferenceHandle)member.Parent);
            var typeName = $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}";
            var name = metadata.GetString(member.Name);

            // The compiler itself asks for the thread in every iterator.
            if (name != "get_CurrentManagedThreadId")
            {
                used.UnionWith([typeName, $"{typeName}.{name}/{Arguments(metadata.GetBlobReader(member.Signature))}"]);
            }
        }

        return used;
    }

    private static int Arguments(BlobReader signature)
    {
        var header = signature.ReadSignatureHeader();
        if (header.IsGeneric)
        {
            signature.ReadCompressedInteger();
        }

        return header.Kind == SignatureKind.Method ? signature.ReadCompressedInteger() : 0;
    }
}
