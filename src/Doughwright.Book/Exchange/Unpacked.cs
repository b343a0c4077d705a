using System.Text;
using Doughwright.Book.Opening;

namespace Doughwright.Book.Exchange;

/// <summary>The files of an export, each read no further than it says it is long.</summary>
internal sealed class Unpacked(IReadOnlyDictionary<string, SourceFile> files, ExchangeFaults faults)
{
    /// <summary>A recipe is some kilobytes; a table of ten years some hundred.</summary>
    private const long MostOfATable = 256L << 20;
    private const int MostOfALine = 32 << 20;

    private static readonly UTF8Encoding Strict = new(false, true);

    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    /// <summary>Names that nobody asked for.</summary>
    public IEnumerable<string> Unused => files.Keys.Where(name => !used.Contains(name));

    /// <summary>A whole file as text; null with a fault when it is not there or is none.</summary>
    public string? Text(string name)
    {
        if (Bytes(name) is not { } bytes)
        {
            return null;
        }

        if (bytes.AsSpan().StartsWith("PK\u0003\u0004"u8))
        {
            faults.Add("import-nested", ("name", name));
            return null;
        }

        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            faults.Add("import-not-text", ("name", name));
            return null;
        }
    }

    /// <summary>A whole file; null with a fault when it is not there or cannot be read.</summary>
    public byte[]? Bytes(string name)
    {
        used.Add(name);
        if (!files.TryGetValue(name, out var file))
        {
            faults.Add("import-file-missing", ("name", name));
            return null;
        }

        if (file.Length > MostOfATable)
        {
            faults.Add("import-file-large", ("name", name), ("megabytes", (int)(MostOfATable >> 20)));
            return null;
        }

        return Reading(name, () =>
        {
            using var stream = file.Open();
            var bytes = new byte[file.Length];
            var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return read == bytes.Length && stream.ReadByte() < 0 ? bytes : throw new InvalidDataException();
        });
    }

    /// <summary>Lines of a file with their numbers, one after the other; none with a fault when it is not there.</summary>
    public IEnumerable<(int Number, byte[] Line)> Lines(string name)
    {
        used.Add(name);
        if (!files.TryGetValue(name, out var file))
        {
            faults.Add("import-file-missing", ("name", name));
            yield break;
        }

        if (Reading(name, file.Open) is not { } opened)
        {
            yield break;
        }

        using var stream = new BufferedStream(opened, 1 << 16);
        var (number, left) = (0, file.Length);
        while (Reading(name, () => Line(stream, ref left)) is { Length: > 0 } line)
        {
            number++;
            yield return (number, line);
        }
    }

    /// <returns>Nothing at the end.</returns>
    private static byte[] Line(Stream stream, ref long left)
    {
        using var line = new MemoryStream();
        for (var next = stream.ReadByte(); next >= 0; next = stream.ReadByte())
        {
            if (--left < 0 || line.Length >= MostOfALine)
            {
                throw new InvalidDataException();
            }

            line.WriteByte((byte)next);
            if (next == '\n')
            {
                break;
            }
        }

        return line.ToArray();
    }

    private T? Reading<T>(string name, Func<T> read) where T : class
    {
        try
        {
            return read();
        }
        catch (Exception problem) when (problem is InvalidDataException or NotSupportedException || BookException.Of(problem, name) is not null)
        {
            faults.Add("import-file-unreadable", ("name", name));
            return null;
        }
    }
}
