using System.Diagnostics;

namespace Doughwright.App.Tests.Book;

/// <summary>A disk of a given size in memory. Only some users may have one; without it a test says so and is skipped.</summary>
internal sealed class SmallDisk : IDisposable
{
    private SmallDisk(string folder) => Folder = folder;

    public string Folder { get; }

    public static SmallDisk Mount(string size)
    {
        var folder = Directory.CreateTempSubdirectory("doughwright-disk-").FullName;
        if (!OperatingSystem.IsLinux() || !Try("mount", "-t", "tmpfs", "-o", $"size={size}", "tmpfs", folder))
        {
            Directory.Delete(folder);
            Assert.Skip("This user may not mount a small disk. Run the tests as root on Linux to have this one too.");
        }

        return new(folder);
    }

    public void Resize(string size) => Assert.True(Try("mount", "-o", $"remount,size={size}", Folder));

    public void MakeReadOnly() => Assert.True(Try("mount", "-o", "remount,ro", Folder));

    public void Dispose()
    {
        Assert.True(Try("umount", Folder));
        Directory.Delete(Folder);
    }

    private static bool Try(string program, params string[] arguments)
    {
        try
        {
            using var run = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
            run.StandardError.ReadToEnd();
            run.WaitForExit();
            return run.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
