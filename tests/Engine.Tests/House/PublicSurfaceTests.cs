using System.Xml.Linq;

namespace Doughwright.Engine.Tests.House;

/// <summary>What the engine shows to the outside is reviewed: tests/data/engine-public.txt. ACCEPT=1 writes it anew.</summary>
public class PublicSurfaceTests
{
    private static readonly string Approved = Tree.PathTo("tests", "data", "engine-public.txt");

    [Fact]
    public void PublicSurface_IsTheReviewedOne()
    {
        var surface = string.Join('\n', Surface.Of(Tree.Engine)) + "\n";
        if (Environment.GetEnvironmentVariable("ACCEPT") == "1")
        {
            File.WriteAllText(Approved, surface);
        }

        Assert.Equal(File.Exists(Approved) ? File.ReadAllText(Approved).ReplaceLineEndings("\n") : "", surface);
    }

    /// <summary>Members whose name and type say all, such as those of records, need no summary; types and what does something do.</summary>
    [Fact]
    public void PublicTypesAndMethods_HaveASummary()
    {
        var documented = XDocument.Load(Path.ChangeExtension(Tree.Engine.Location, ".xml")).Descendants("member")
            .Where(member => member.Element("summary") is not null || member.Element("inheritdoc") is not null)
            .Select(member => member.Attribute("name")!.Value.Split('(')[0])
            .ToHashSet();
        var untold = Surface.NamesToDocument(Tree.Engine).Except(documented).ToList();
        Assert.True(untold.Count == 0, string.Join('\n', untold));
    }
}
