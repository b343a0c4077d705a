using System.Diagnostics;

namespace Doughwright.Browser.Tests.Running;

/// <summary>Readers' pages in a folder of their own, made by the program as a person makes them.</summary>
internal sealed class ReaderPages : IDisposable
{
    /// <summary>What stands before the name of such a page where the others have an address.</summary>
    public const string Prefix = "reader:";

    private readonly string _folder = Directory.CreateTempSubdirectory("pages-").FullName;

    /// <summary>Address of the file of a page.</summary>
    /// <param name="page">"reader:potato-rolls" or "reader:hearth-loaf --measures us": a text of the demo or of the tests, and options.</param>
    public string AddressOf(string page)
    {
        var words = page[Prefix.Length..].Split(' ');
        var folder = Path.Join(_folder, string.Join('_', words));
        if (!Directory.Exists(folder))
        {
            Make([TextOf(words[0]), .. words[1..]], folder);
        }

        return new Uri(Assert.Single(Directory.GetFiles(folder))).AbsoluteUri;
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>File of a text of the demo or of the tests.</summary>
    public static string TextOf(string name)
    {
        string[] places = [Path.Join(Root, "demo", "recipes", name + ".yaml"), Path.Join(Root, "tests", "data", "pages", name + ".yaml")];
        return places.First(File.Exists);
    }

    /// <summary>Files of all texts of the demo.</summary>
    public static IReadOnlyList<string> DemoTexts => Directory.GetFiles(Path.Join(Root, "demo", "recipes"), "*.yaml");

    public static IReadOnlyList<string> DemoNotes => Directory.GetFiles(Path.Join(Root, "demo", "notes"), "*.md");

    private static string Root
    {
        get
        {
            var root = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Join(root.FullName, "Doughwright.slnx")))
            {
                root = root.Parent ?? throw new DirectoryNotFoundException("The tests run outside the house.");
            }

            return root.FullName;
        }
    }

    private static void Make(string[] words, string folder)
    {
        using var process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [RunningDesk.Program, "page", .. words, "--out", folder])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        }) ?? throw new InvalidOperationException("dotnet did not start.");
        var messages = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, messages.Result);
    }
}
