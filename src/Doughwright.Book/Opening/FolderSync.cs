using System.Runtime.InteropServices;

namespace Doughwright.Book.Opening;

/// <summary>Brings names in a folder to the disk: a file that was renamed may otherwise have its old name after the power failed.</summary>
internal static class FolderSync
{
    public static void Flush(string folder)
    {
        // There the file system keeps names in a log of its own, and a folder cannot be flushed.
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var handle = Open(folder, 0);
        if (handle < 0)
        {
            throw new IOException(Marshal.GetLastPInvokeErrorMessage(), Marshal.GetLastPInvokeError());
        }

        try
        {
            // Some file systems, shared ones above all, cannot flush a folder. Then there is nothing more to be had.
            _ = Flush(handle);
        }
        finally
        {
            _ = Close(handle);
        }
    }

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    private static extern int Open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static extern int Flush(int handle);

    [DllImport("libc", EntryPoint = "close")]
    private static extern int Close(int handle);
}
