namespace Doughwright.Book.Opening;

/// <summary>Numbers by which the systems say why a file could not be used.</summary>
internal static class SystemErrors
{
    private const int InUseWindows = unchecked((int)0x80070020);
    private const int LockedWindows = unchecked((int)0x80070021);
    private const int FullWindows = unchecked((int)0x80070070);
    private const int FullHandleWindows = unchecked((int)0x80070027);
    private const int WriteProtectedWindows = unchecked((int)0x80070013);

    // The same on Linux and macOS, but for the last two pairs.
    private const int TooLarge = 27;
    private const int NoSpace = 28;
    private const int ReadOnlySystem = 30;
    private const int HeldLinux = 11;
    private const int HeldMac = 35;
    private const int QuotaLinux = 122;
    private const int QuotaMac = 69;

    /// <returns>Null when the number says nothing that we know.</returns>
    public static BookTrouble? Of(IOException problem)
    {
        var number = problem.HResult;
        if (OperatingSystem.IsWindows())
        {
            return number switch
            {
                InUseWindows or LockedWindows => BookTrouble.InUse,
                FullWindows or FullHandleWindows => BookTrouble.Full,
                WriteProtectedWindows => BookTrouble.ReadOnly,
                _ => null,
            };
        }

        return number switch
        {
            NoSpace or TooLarge => BookTrouble.Full,
            ReadOnlySystem => BookTrouble.ReadOnly,
            HeldLinux when !OperatingSystem.IsMacOS() => BookTrouble.InUse,
            QuotaLinux when !OperatingSystem.IsMacOS() => BookTrouble.Full,
            HeldMac when OperatingSystem.IsMacOS() => BookTrouble.InUse,
            QuotaMac when OperatingSystem.IsMacOS() => BookTrouble.Full,
            _ => null,
        };
    }
}
