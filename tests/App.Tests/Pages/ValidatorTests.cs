using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Doughwright.App.Tests.Pages;

/// <summary>
/// Pages before validators from outside: HTML by html-validate; schema.org by @adobe/structured-data-validator, with the vocabulary that schema-dts
/// is generated from. They are shown planted faults too, so that their silence means something.
/// </summary>
[Trait("Category", "Slow")]
public sealed class ValidatorTests(ValidatorTests.Verdicts verdicts) : IClassFixture<ValidatorTests.Verdicts>
{
    /// <summary>A fault, what is changed in a sound page to plant it, and what the validators must say.</summary>
    private static readonly (string Name, Func<string, string> Plant, string Said)[] Faults =
    [
        ("missing name", page => Instead(page, "\"name\":\"Potato rolls\",", ""), "Required attribute \"name\" is missing"),
        ("missing image", page => Instead(page, "\"image\":{", "\"thumbnail\":{"), "Required attribute \"image\" is missing"),
        ("step without text", page => Instead(page, "\"text\":\"On the hob. Done when a knife slides in\",", ""), "One of the following conditions needs to be met"),
        ("time in words", page => Instead(page, "\"totalTime\":\"PT6H5M\"", "\"totalTime\":\"14 hours\""), "Invalid type for attribute \"totalTime\""),
        ("range of times", page => Instead(page, "\"totalTime\":\"PT6H5M\"", "\"totalTime\":\"PT5H-PT6H\""), "Invalid type for attribute \"totalTime\""),
        ("unknown property", page => Instead(page, "\"recipeYield\"", "\"recipeYeild\""), "recipeYeild"),
        ("unknown property of a step", page => Instead(page, "\"text\":\"On the hob.", "\"words\":\"x\",\"text\":\"On the hob."), "words"),
        ("unparsable", page => Instead(page, "\"name\":\"Potato rolls\",", "\"name\":\"Potato </script> rolls\","), "structured"),
        ("element left open", page => Instead(page, "</table>", ""), "html"),
        ("same id twice", page => Instead(page, "id=\"step-2\"", "id=\"step-1\""), "no-dup-id"),
        ("label that leads nowhere", page => Instead(page, "aria-labelledby=\"rooms\"", "aria-labelledby=\"zimmer\""), "no-missing-references"),
        ("item outside a list", page => Instead(page, "<ol class=\"steps\">", "<div class=\"steps\">").Replace("</ol>", "</div>", StringComparison.Ordinal), "element-permitted-content"),
        ("element of nobody", page => Instead(page, "<p dir=\"auto\">On the hob.", "<p dir=\"auto\">On the <hob>."), "html"),
    ];

    public static TheoryData<string> FaultNames => [.. Faults.Select(fault => fault.Name)];

    [Theory]
    [MemberData(nameof(PageTests.Pages), MemberType = typeof(PageTests))]
    public void SoundPage_IsAccepted(string name) => Assert.Equal([], verdicts.On(name).Where(said => !said.IsOnlyAdvice).Select(said => $"{said.Validator}: {said.Message}"));

    [Theory]
    [MemberData(nameof(FaultNames))]
    public void PlantedFault_IsFound(string name)
    {
        var expected = Faults.First(fault => fault.Name == name).Said;
        Assert.Contains(verdicts.On(name).Where(said => !said.IsOnlyAdvice), said => said.Validator == expected || said.Message.Contains(expected, StringComparison.Ordinal));
    }

    private static string Instead(string page, string old, string @new) =>
        page.IndexOf(old, StringComparison.Ordinal) is var at and >= 0
            ? page[..at] + @new + page[(at + old.Length)..]
            : throw new InvalidOperationException($"The page holds no {old}, so nothing can be planted there.");

    /// <summary>What the validators said about every page, asked once.</summary>
    public sealed class Verdicts : IDisposable
    {
        private static readonly string Folder = House.PathTo("tests", "validators");
        private readonly string pages = Directory.CreateTempSubdirectory("validated-").FullName;
        private readonly ILookup<string, Said> all;

        public Verdicts()
        {
            var sound = MadePages.Named("potato-rolls").Html;
            var cases = MadePages.Names.Select(name => (Name: name, Html: MadePages.Named(name).Html)).Concat(Faults.Select(fault => (fault.Name, Html: fault.Plant(sound)))).ToArray();
            foreach (var (name, html) in cases)
            {
                File.WriteAllText(FileOf(name), html);
            }

            all = Ask([.. cases.Select(each => FileOf(each.Name))]).ToLookup(said => Path.GetFileNameWithoutExtension(said.File));
        }

        internal IEnumerable<Said> On(string name) => all[Path.GetFileNameWithoutExtension(FileOf(name))];

        public void Dispose() => Directory.Delete(pages, recursive: true);

        private string FileOf(string name) => Path.Join(pages, name.Replace(' ', '-') + ".html");

        private static List<Said> Ask(string[] files)
        {
            if (!Directory.Exists(Path.Join(Folder, "node_modules")))
            {
                throw new InvalidOperationException("The validators are not installed. Install Node.js 18.19 or later with npm (Debian, Ubuntu: apt-get install nodejs npm), then run: npm ci --prefix tests/validators");
            }

            using var node = Process.Start(new ProcessStartInfo("node", [Path.Join(Folder, "validate.mjs"), .. files]) { RedirectStandardOutput = true, RedirectStandardError = true })
                ?? throw new InvalidOperationException("node did not start.");
            var errors = node.StandardError.ReadToEndAsync();
            var output = node.StandardOutput.ReadToEnd();
            node.WaitForExit();
            Assert.True(node.ExitCode == 0, errors.Result);
            return JsonSerializer.Deserialize<List<Said>>(output)!;
        }
    }

    internal sealed record Said(
        [property: JsonPropertyName("file")] string File,
        [property: JsonPropertyName("validator")] string Validator,
        [property: JsonPropertyName("severity")] string Severity,
        [property: JsonPropertyName("message")] string Message)
    {
        /// <summary>Fields that a page may have and that nobody has told us: a rating, a video, an author.</summary>
        public bool IsOnlyAdvice => Severity == "WARNING" && Message.StartsWith("Missing field", StringComparison.Ordinal) && Message.Contains("(optional)", StringComparison.Ordinal);
    }
}
