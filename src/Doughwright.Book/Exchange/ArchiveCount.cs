using System.Buffers.Binary;

namespace Doughwright.Book.Exchange;

/// <summary>
/// Counts the entries of an archive in its directory, and no further than is asked: the library makes a list of all of them before it tells how many there are.
/// The places of the numbers are those of the published form of ZIP archives (APPNOTE 6.3.10, sections 4.3.12 to 4.3.16).
/// </summary>
internal static class ArchiveCount
{
    private const uint End = 0x06054b50;
    private const uint LongEnd = 0x06064b50;
    private const uint LongEndPlace = 0x07064b50;
    private const uint Entry = 0x02014b50;
    private const int EndLength = 22;
    private const int LongEndLength = 56;
    private const int LongEndPlaceLength = 20;
    private const int EntryLength = 46;

    /// <summary>Letters that can stand behind the end.</summary>
    private const int LongestRemark = ushort.MaxValue;

    /// <summary>Whether more entries stand in the directory than so many; false also for what is no archive. The stream is at its beginning afterwards.</summary>
    public static bool IsAbove(Stream archive, int most)
    {
        try
        {
            return Directory(archive) is { } at && Count(archive, at, most) > most;
        }
        finally
        {
            archive.Position = 0;
        }
    }

    private static int Count(Stream archive, long at, int most)
    {
        var count = 0;
        while (count <= most && Read(archive, at, EntryLength) is { } entry && Number(entry, 0) == Entry)
        {
            count++;
            at += EntryLength + Short(entry, 28) + Short(entry, 30) + Short(entry, 32);
        }

        return count;
    }

    /// <summary>Where the directory begins; null where none is found.</summary>
    private static long? Directory(Stream archive)
    {
        var from = Math.Max(0, archive.Length - EndLength - LongestRemark);
        if (Read(archive, from, (int)(archive.Length - from)) is not { Length: >= EndLength } rest)
        {
            return null;
        }

        for (var at = rest.Length - EndLength; at >= 0; at--)
        {
            if (Number(rest.AsSpan(at), 0) == End)
            {
                return LongDirectory(archive, from + at) ?? Number(rest.AsSpan(at), 16);
            }
        }

        return null;
    }

    /// <summary>Where the directory of a large archive begins; null for one that is not written so.</summary>
    private static long? LongDirectory(Stream archive, long end)
    {
        if (Read(archive, end - LongEndPlaceLength, LongEndPlaceLength) is not { } place || Number(place, 0) != LongEndPlace)
        {
            return null;
        }

        var at = BinaryPrimitives.ReadUInt64LittleEndian(place.AsSpan(8));
        return at <= long.MaxValue && Read(archive, (long)at, LongEndLength) is { } found && Number(found, 0) == LongEnd
            && BinaryPrimitives.ReadUInt64LittleEndian(found.AsSpan(48)) is var directory and <= long.MaxValue
            ? (long)directory
            : null;
    }

    /// <summary>So many bytes from a place; null where the archive does not have them.</summary>
    private static byte[]? Read(Stream archive, long at, int length)
    {
        if (at < 0 || at > archive.Length - length)
        {
            return null;
        }

        var bytes = new byte[length];
        archive.Position = at;
        archive.ReadExactly(bytes);
        return bytes;
    }

    private static uint Number(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes[at..]);

    private static int Short(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16LittleEndian(bytes[at..]);
}
