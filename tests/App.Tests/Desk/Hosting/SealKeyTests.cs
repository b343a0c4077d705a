using Doughwright.App.Desk.Hosting;

namespace Doughwright.App.Tests.Desk.Hosting;

[System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
public sealed class SealKeyTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("state-").FullName;

    private string KeyFile => Path.Join(folder, "doughwright", "kept.key");

    [Fact]
    public void SameUser_HasTheSameKey_EvenWhenTwoDesksStartAtOnce()
    {
        var seals = new string[16];
        Parallel.For(0, seals.Length, i => seals[i] = Seal());
        Assert.Single(seals.Append(Seal()).Distinct());
        Assert.Equal([KeyFile], Directory.GetFiles(Path.GetDirectoryName(KeyFile)!));
    }

    [Fact]
    public void Key_IsReadableByItsUserOnly()
    {
        Seal();
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(KeyFile));
    }

    [Fact]
    public void KeyThatOthersCanRead_OrThatIsNone_IsReplaced()
    {
        var first = Seal();
        File.SetUnixFileMode(KeyFile, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        var second = Seal();
        Assert.NotEqual(first, second);
        Assert.Equal(second, Seal());
        File.WriteAllText(KeyFile, "");
        Assert.NotEqual(second, Seal());
        Assert.Equal(Seal(), Seal());
    }

    [Fact]
    public void FolderThatCannotBeUsed_GivesAKeyForThisDesk()
    {
        var blocked = Path.Join(folder, "blocked");
        File.WriteAllText(blocked, "a file");
        Assert.NotEqual(Seal(SealKey.In(blocked)), Seal(SealKey.In(blocked)));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Seal() => Seal(SealKey.In(Path.GetDirectoryName(KeyFile)!));

    private static string Seal(SealKey key) => Convert.ToHexString(key.Seal([1, 2, 3]));
}
