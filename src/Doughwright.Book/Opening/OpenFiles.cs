namespace Doughwright.Book.Opening;

/// <summary>
/// The book files that this program has connections to. To open and close such a file by any other way would let go of the library's locks on it:
/// the system knows one lock for each program and file.
/// </summary>
internal static class OpenFiles
{
    private static readonly Lock Turn = new();
    private static readonly Dictionary<string, int> Connections = new(StringComparer.Ordinal);

    public static void Add(string path)
    {
        lock (Turn)
        {
            Connections[path] = Connections.GetValueOrDefault(path) + 1;
        }
    }

    public static void Remove(string path)
    {
        lock (Turn)
        {
            if (--Connections[path] == 0)
            {
                Connections.Remove(path);
            }
        }
    }

    /// <summary>Looks at the bytes of a file that nobody in this program is connected to, and keeps it so meanwhile.</summary>
    /// <returns>Whether it was looked at.</returns>
    public static bool Unless(string path, Action look)
    {
        lock (Turn)
        {
            if (Connections.ContainsKey(path))
            {
                return false;
            }

            look();
            return true;
        }
    }
}
