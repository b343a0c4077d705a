using System.Security.Cryptography;
using System.Text;

namespace Doughwright.App.Desk.Hosting;

/// <summary>
/// What the desk seals its kept results with. It lies apart from the user's folder, where only this user reads it: a folder that came from elsewhere,
/// kept results and all, carries no seal of this desk.
/// </summary>
internal sealed class SealKey
{
    private const int Length = 32;
    private const UnixFileMode OnlyTheUser = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private readonly byte[] bytes;

    private SealKey(byte[] bytes) => this.bytes = bytes;

    /// <summary>One that nobody knows and that is gone with the desk.</summary>
    public static SealKey OfThisDesk() => new(RandomNumberGenerator.GetBytes(Length));

    /// <summary>The one of this user, made at the first use. Where none can be kept, what this desk seals is good as long as it is open.</summary>
    public static SealKey OfUser() => StateFolder() is { } folder ? In(folder) : OfThisDesk();

    /// <summary>The key that lies in a folder, made when there is none that is sound.</summary>
    public static SealKey In(string folder)
    {
        var file = Path.Join(folder, "kept.key");
        try
        {
            // Of desks that start at once one makes the key, and the others wait for it.
            using var only = new Mutex(false, "doughwright-key-" + Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(Path.GetFullPath(file))))[..16]);
            Take(only);
            try
            {
                return Read(file) ?? Make(folder, file);
            }
            finally
            {
                only.ReleaseMutex();
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or WaitHandleCannotBeOpenedException)
        {
            return OfThisDesk();
        }
    }

    /// <summary>Ties a text to its name, so that neither can be exchanged alone.</summary>
    public byte[] Seal(ReadOnlySpan<byte> nameAndText) => HMACSHA256.HashData(bytes, nameAndText);

    /// <summary>Null when there is none, or when others could have read or changed it.</summary>
    private static SealKey? Read(string path)
    {
        var file = new FileInfo(path);
        return file is { Exists: true, LinkTarget: null, Length: Length } && (OperatingSystem.IsWindows() || file.UnixFileMode == OnlyTheUser)
            ? new(File.ReadAllBytes(path))
            : null;
    }

    private static SealKey Make(string folder, string file)
    {
        Directory.CreateDirectory(folder);
        var beside = Path.Join(folder, Path.GetRandomFileName());
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OnlyTheUser;
        }

        using (var stream = new FileStream(beside, options))
        {
            stream.Write(RandomNumberGenerator.GetBytes(Length));
        }

        File.Move(beside, file, overwrite: true);
        return Read(file) ?? OfThisDesk();
    }

    /// <summary>Waits for its turn. A desk that was killed in its turn has left at worst a file beside the key.</summary>
    private static void Take(Mutex only)
    {
        try
        {
            only.WaitOne();
        }
        catch (AbandonedMutexException)
        {
            return;
        }
    }

    /// <summary>Where programs keep what they remember of this user; null when the system knows none.</summary>
    private static string? StateFolder()
    {
        if (OperatingSystem.IsWindows() || OperatingSystem.IsMacOS())
        {
            var local = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
            return local.Length > 0 ? Path.Join(local, "doughwright-state") : null;
        }

        var given = Environment.GetEnvironmentVariable("XDG_STATE_HOME");
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile, Environment.SpecialFolderOption.DoNotVerify);
        return Path.IsPathFullyQualified(given ?? "") ? Path.Join(given, "doughwright")
            : home.Length > 0 ? Path.Join(home, ".local", "state", "doughwright")
            : null;
    }
}
