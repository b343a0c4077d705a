using System.Reflection;

namespace Doughwright.App.Wording;

/// <summary>Files that are built into the program.</summary>
internal static class EmbeddedFile
{
    public static IEnumerable<string> Under(string folder) =>
        Assembly.GetExecutingAssembly().GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal));

    public static byte[] Bytes(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new ArgumentOutOfRangeException(nameof(name), name, "No such file is built in.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
