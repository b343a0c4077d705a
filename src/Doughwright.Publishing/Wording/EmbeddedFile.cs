using System.Reflection;

namespace Doughwright.Publishing.Wording;

/// <summary>Files that are built into an assembly.</summary>
internal static class EmbeddedFile
{
    public static IEnumerable<string> Under(Assembly assembly, string folder) =>
        assembly.GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal));

    public static byte[] Bytes(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentOutOfRangeException(nameof(name), name, "No such file is built in.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
