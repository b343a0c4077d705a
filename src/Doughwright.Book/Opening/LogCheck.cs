using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Doughwright.Book.Opening;

/// <summary>
/// Whether the log of a book still holds everything that was once told to be written. The library takes a log up to the first place that does not fit and
/// says nothing about the rest, because a program that ended in the middle leaves such a place too. Two things tell a loss from that: more than one
/// finished write in a row behind the place, for a second is begun only when the first is on the disk, and the index beside the log, which counts a write
/// only then.
/// </summary>
/// <remarks>Layout: the library's descriptions of its file format (section 4, the write-ahead log) and of its log's index.</remarks>
internal static class LogCheck
{
    private const int HeaderLength = 32;
    private const int FrameHeaderLength = 24;
    private const int SummedOfHeader = 24;
    private const int SummedOfFrame = 8;
    private const int SaltAt = 16;
    private const int SaltLength = 8;
    private const int PageSizeAt = 8;
    private const int SumAt = 24;
    private const int FrameSaltAt = 8;
    private const int FrameSumAt = 16;
    private const int CommitAt = 4;
    private const uint LittleEndianSums = 0x377f0682;
    private const uint BigEndianSums = 0x377f0683;

    /// <summary>Nobody may write the book meanwhile, and this program must not be connected to it.</summary>
    /// <returns>What is lost, for those who look after the file; null when nothing speaks for a loss.</returns>
    public static string? Loss(string book)
    {
        var log = Bytes(BookPaths.Log(book));
        var index = LogIndex.Read(Bytes(BookPaths.Index(book)));
        if (log.Length < HeaderLength)
        {
            return Missed(index, 0);
        }

        var header = log.AsSpan(0, HeaderLength);
        if (Sums(header) is not { } sums)
        {
            return header.ContainsAnyExcept((byte)0) ? "the head of the log" : Missed(index, 0);
        }

        var (whole, behind) = Walk(log, sums);
        if (behind > 1)
        {
            return $"{behind} writes behind a broken place in the log";
        }

        return index is { } known && header.Slice(SaltAt, SaltLength).SequenceEqual(known.Salt) ? Missed(index, whole) : null;
    }

    private static string? Missed(LogIndex? index, long whole) =>
        index is { } known && known.Last > Math.Max(whole, known.InTheFile) ? $"{known.Last - Math.Max(whole, known.InTheFile)} pages at the end of the log" : null;

    /// <summary>The sums that the head carries; null when they are not its own.</summary>
    private static (uint First, uint Second)? Sums(ReadOnlySpan<byte> header)
    {
        if (BinaryPrimitives.ReadUInt32BigEndian(header) is not (LittleEndianSums or BigEndianSums))
        {
            return null;
        }

        var sums = Sum(header[..SummedOfHeader], IsBigEndian(header), (0, 0));
        var size = BinaryPrimitives.ReadUInt32BigEndian(header[PageSizeAt..]);
        return sums == Carried(header[SumAt..]) && size is >= 512 and <= 65536 && uint.IsPow2(size) ? sums : null;
    }

    /// <returns>Pages up to the last finished write of the sound part, and the most finished writes in one unbroken row behind it.</returns>
    private static (long Whole, int Behind) Walk(ReadOnlySpan<byte> log, (uint First, uint Second) sums)
    {
        var header = log[..HeaderLength];
        var length = FrameHeaderLength + (int)BinaryPrimitives.ReadUInt32BigEndian(header[PageSizeAt..]);
        var isSound = true;
        long whole = 0;
        var (behind, row) = (0, 0);
        for (var (at, page) = (HeaderLength, 1L); at + length <= log.Length; (at, page) = (at + length, page + 1))
        {
            var frame = log.Slice(at, length);
            if (!frame.Slice(FrameSaltAt, SaltLength).SequenceEqual(header.Slice(SaltAt, SaltLength)))
            {
                // Left over from before the log began anew, unless more of this log follows.
                (isSound, row) = (false, 0);
                continue;
            }

            // Each page carries the sum of all before it, so behind a broken place the row goes on from what the broken page carries.
            sums = Sum(frame[FrameHeaderLength..], IsBigEndian(header), Sum(frame[..SummedOfFrame], IsBigEndian(header), sums));
            var fits = sums == Carried(frame[FrameSumAt..]);
            sums = Carried(frame[FrameSumAt..]);
            isSound = isSound && fits;
            var ends = BinaryPrimitives.ReadUInt32BigEndian(frame[CommitAt..]) != 0;
            whole = isSound && ends ? page : whole;
            row = (isSound, fits) switch { (true, _) => 0, (_, true) => row, _ => 0 } + (!isSound && ends ? 1 : 0);
            behind = Math.Max(behind, row);
        }

        return (whole, behind);
    }

    private static bool IsBigEndian(ReadOnlySpan<byte> header) => BinaryPrimitives.ReadUInt32BigEndian(header) == BigEndianSums;

    private static (uint First, uint Second) Carried(ReadOnlySpan<byte> at) => (BinaryPrimitives.ReadUInt32BigEndian(at), BinaryPrimitives.ReadUInt32BigEndian(at[4..]));

    internal static (uint First, uint Second) Sum(ReadOnlySpan<byte> bytes, bool bigEndian, (uint First, uint Second) sums)
    {
        var (first, second) = sums;
        var words = MemoryMarshal.Cast<byte, uint>(bytes);
        var turns = bigEndian == BitConverter.IsLittleEndian;
        unchecked
        {
            for (var i = 0; i + 1 < words.Length; i += 2)
            {
                first += (turns ? BinaryPrimitives.ReverseEndianness(words[i]) : words[i]) + second;
                second += (turns ? BinaryPrimitives.ReverseEndianness(words[i + 1]) : words[i + 1]) + first;
            }
        }

        return (first, second);
    }

    private static byte[] Bytes(string path)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var bytes = new byte[stream.Length];
            return bytes[..stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
        }
        catch (FileNotFoundException)
        {
            return [];
        }
        catch (Exception problem) when (BookException.Of(problem, path) is { } told)
        {
            throw told;
        }
    }
}
