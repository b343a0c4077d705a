namespace Doughwright.Engine.Remedies;

/// <summary>A text with one line of it changed; line ends stay as they are.</summary>
internal static class TextLines
{
    public static string Change(string text, int number, Func<string, string> change)
    {
        var lines = text.Split('\n');
        if (number < 1 || number > lines.Length)
        {
            return text;
        }

        var line = lines[number - 1];
        var end = line.EndsWith('\r') ? "\r" : "";
        lines[number - 1] = change(line[..^end.Length]) + end;
        return string.Join('\n', lines);
    }

    public static string Drop(string text, int number)
    {
        var lines = text.Split('\n').ToList();
        if (number >= 1 && number <= lines.Count)
        {
            lines.RemoveAt(number - 1);
        }

        return string.Join('\n', lines);
    }

    public static string InsertAfter(string text, int number, string line)
    {
        var lines = text.Split('\n').ToList();
        var end = lines.Count > 0 && lines[0].EndsWith('\r') ? "\r" : "";
        lines.Insert(Math.Clamp(number, 0, lines.Count), line + end);
        return string.Join('\n', lines);
    }

    /// <summary>Some words at a column exchanged: the first from there on, else the first of the line.</summary>
    public static string Replace(string line, int column, string old, string fresh)
    {
        var at = line.IndexOf(old, Math.Clamp(column - 1, 0, line.Length), StringComparison.Ordinal);
        at = at < 0 ? line.IndexOf(old, StringComparison.Ordinal) : at;
        return at < 0 ? line : line[..at] + fresh + line[(at + old.Length)..];
    }

    /// <summary>The spaces a line begins with.</summary>
    public static int IndentOf(string line) => line.Length - line.TrimStart(' ').Length;
}
