namespace Doughwright.Engine.Tests.House;

/// <summary>Files stay short enough to be read at one go.</summary>
public class SizeTests
{
    /// <summary>Files that may be longer than the rest, each with its reason.</summary>
    private static readonly Dictionary<string, string> Exceptions = [];

    private static readonly int[] Lengths =
        [.. Tree.Sources().Where(file => !Exceptions.ContainsKey(Path.GetFileName(file))).Select(file => File.ReadLines(file).Count()).Order()];

    [Fact]
    public void MedianFile_HasAtMost110Lines() => Assert.InRange(Lengths[Lengths.Length / 2], 1, 110);

    [Fact]
    public void NineFilesInTen_HaveFewerThan300Lines() => Assert.InRange(Lengths[Lengths.Length * 9 / 10], 1, 299);

    [Fact]
    public void NoFile_HasMoreThan500Lines() => Assert.InRange(Lengths[^1], 1, 500);

    [Fact]
    public void Exceptions_StillExist() => Assert.Empty(Exceptions.Keys.Except(Tree.Sources().Select(file => Path.GetFileName(file))));

    [Fact]
    public void AtLeastTwoTypesInFive_StayInsideTheEngine()
    {
        var types = Tree.EngineTypes().ToList();
        Assert.InRange(types.Count(type => !type.IsPublic) / (double)types.Count, 0.4, 1);
    }
}
