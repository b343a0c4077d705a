namespace Doughwright.App.Desk.Hosting;

/// <summary>Where the desk keeps the author's book: a folder of the user's.</summary>
internal sealed class DataFolder(string root)
{
    public string Root => root;

    public string Book => Path.Join(root, "book.db");

    /// <summary>Where recipes lay as texts before there were books.</summary>
    public string Recipes => Path.Join(root, "recipes");

    public string Kitchens => Path.Join(root, "kitchens");

    /// <summary>Texts that were typed and are not understood yet.</summary>
    public string Drafts => Path.Join(root, "drafts");

    /// <summary>List of what could not be laid into the book when it was made.</summary>
    public string Left => Path.Join(root, "left.txt");

    /// <summary>Results that can be computed again at any time.</summary>
    public string Kept => Path.Join(root, "kept");

    /// <summary>The folder that the system keeps for programs' data of this user.</summary>
    public static DataFolder OfUser() => new(Path.Join(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "doughwright"));
}
