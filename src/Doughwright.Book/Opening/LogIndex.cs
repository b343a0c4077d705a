using System.Runtime.InteropServices;

namespace Doughwright.Book.Opening;

/// <summary>What the index beside a log says of it. A program that ends by force leaves it behind.</summary>
/// <param name="Last">Pages in the log up to the last finished write.</param>
/// <param name="InTheFile">So many of them stand in the book's own file as well.</param>
/// <param name="Salt">Of the log that it belongs to.</param>
internal sealed record LogIndex(uint Last, uint InTheFile, byte[] Salt)
{
    private const int Length = 48;
    private const int Summed = 40;
    private const uint Version = 3007000;
    private const int IsMadeAt = 12;
    private const int LastAt = 16;
    private const int SaltAt = 32;
    private const int SaltLength = 8;
    private const int InTheFileAt = 2 * Length;

    /// <returns>Null when it is missing or does not agree with itself, which is no fault: it is made anew from the log.</returns>
    public static LogIndex? Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < InTheFileAt + sizeof(uint) || !bytes[..Length].SequenceEqual(bytes[Length..InTheFileAt]))
        {
            return null;
        }

        var sums = LogCheck.Sum(bytes[..Summed], !BitConverter.IsLittleEndian, (0, 0));
        return Number(bytes) == Version && bytes[IsMadeAt] == 1 && sums == (Number(bytes[Summed..]), Number(bytes[(Summed + 4)..]))
            ? new(Number(bytes[LastAt..]), Number(bytes[InTheFileAt..]), bytes.Slice(SaltAt, SaltLength).ToArray())
            : null;
    }

    /// <summary>In the order of the machine: the index never leaves it.</summary>
    private static uint Number(ReadOnlySpan<byte> at) => MemoryMarshal.Read<uint>(at);
}
