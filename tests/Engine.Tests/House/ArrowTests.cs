using System.Text.RegularExpressions;

namespace Doughwright.Engine.Tests.House;

/// <summary>The rooms of the engine know each other in one direction only.</summary>
public class ArrowTests
{
    /// <summary>Lowest first. A room may use every room of a lower floor.</summary>
    private static readonly string[][] Floors =
    [
        ["Quantities", "Numerics"],
        ["Ingredients"],
        ["Kitchens"],
        ["Recipes"],
        ["Shapes"],
        ["TextForm", "Formulas", "Heat"],
        ["Fermentation", "Baking"],
        ["Rehearsals"],
        ["Remedies", "Cases", "Sides", "Editing"],
    ];

    [Fact]
    public void EveryFolderWithSource_IsARoomOnAFloor() =>
        Assert.Equal(Floors.SelectMany(floor => floor).Order(), Tree.Sources("Doughwright.Engine").Select(Tree.RoomOf).Distinct().Order());

    [Fact]
    public void Arrows_GoDownOnly()
    {
        var arrows = Arrows().ToList();
        Assert.True(arrows.Count > 100, $"{arrows.Count} arrows");
        Assert.DoesNotContain(arrows, arrow => FloorOf(arrow.To) >= FloorOf(arrow.From));
    }

    [Fact]
    public void Namespaces_FollowTheRooms() => Assert.All(Tree.Sources("Doughwright.Engine"), file =>
        Assert.Matches($@"namespace Doughwright\.Engine\.{Tree.RoomOf(file)}(\.\w+)*;", Tree.Code(file)));

    [Fact]
    public void Engine_KnowsNoRoomOfTheProgram() =>
        Assert.All(Tree.Sources("Doughwright.Engine"), file => Assert.DoesNotContain("Doughwright.App", Tree.Code(file), StringComparison.Ordinal));

    /// <summary>What opens pictures is large and not ours: whoever else needs a picture looked at is given a function.</summary>
    [Fact]
    public void PictureLibrary_IsKnownInOneRoom()
    {
        Assert.Equal(
            ["Doughwright.Publishing"],
            Directory.EnumerateFiles(Tree.PathTo("src"), "*.csproj", SearchOption.AllDirectories)
                .Where(file => File.ReadAllText(file).Contains("SkiaSharp", StringComparison.Ordinal))
                .Select(file => Path.GetFileNameWithoutExtension(file)!));
        var rooms = Tree.Sources().Where(file => Tree.Code(file).Contains("SkiaSharp", StringComparison.Ordinal))
            .Select(file => string.Join('/', Path.GetRelativePath(Tree.PathTo("src"), file).Split(Path.DirectorySeparatorChar)[..2])).Distinct();
        Assert.Equal(["Doughwright.Publishing/Pictures"], rooms);
    }

    private static int FloorOf(string room) => Array.FindIndex(Floors, floor => floor.Contains(room));

    private static IEnumerable<(string From, string To, string File)> Arrows()
    {
        // "using Doughwright.Engine.Heat" and the short form "Heat.Body" that C# allows inside the engine.
        var names = string.Join('|', Floors.SelectMany(floor => floor));
        var mention = new Regex($@"(?:Doughwright\.Engine\.|(?<![\w.]))(?<room>{names})(?=[.;]\s*(?:[A-Z]|$))", RegexOptions.Multiline);
        return
            from file in Tree.Sources("Doughwright.Engine")
            from to in mention.Matches(Tree.Code(file)).Select(match => match.Groups["room"].Value).Distinct()
            let room = Tree.RoomOf(file)
            where to != room
            select (room, to, Path.GetFileName(file));
    }
}
