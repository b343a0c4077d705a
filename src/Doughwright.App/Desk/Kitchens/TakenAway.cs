using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>Takes a text off its shelf and brings it back. Nothing is deleted: the text stays in the folder under a name that nobody reads.</summary>
internal static class TakenAway
{
    private const string Ending = ".taken-away";

    /// <summary>False when no text that can be read has this name.</summary>
    /// <exception cref="IOException">The folder is not to be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">Like it.</exception>
    public static bool Take(TextFolder folder, string name)
    {
        if (!folder.Names().Contains(name, StringComparer.Ordinal))
        {
            return false;
        }

        // An older one of the name, taken away before, steps back: the newest is the one that comes back.
        if (File.Exists(folder.FileOf(name) + Ending))
        {
            File.Move(folder.FileOf(name) + Ending, Free(folder.FileOf(name) + Ending));
        }

        File.Move(folder.FileOf(name), folder.FileOf(name) + Ending);
        return true;
    }

    /// <summary>Whether there is something of this name to bring back, and nothing in its place.</summary>
    public static bool CanBringBack(TextFolder folder, string name) =>
        TextNames.FitsAddress(name) && Path.GetFileName(name) == name && File.Exists(folder.FileOf(name) + Ending) && !Path.Exists(folder.FileOf(name));

    /// <summary>False when there is none of this name, or another has taken its place.</summary>
    public static bool BringBack(TextFolder folder, string name)
    {
        if (!CanBringBack(folder, name))
        {
            return false;
        }

        File.Move(folder.FileOf(name) + Ending, folder.FileOf(name), overwrite: false);
        return true;
    }

    private static string Free(string file)
    {
        var number = 1;
        while (Path.Exists(FormattableString.Invariant($"{file}-{number}")))
        {
            number++;
        }

        return FormattableString.Invariant($"{file}-{number}");
    }
}
