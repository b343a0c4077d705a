using System.Security.Cryptography;
using System.Xml.Linq;

namespace Doughwright.App.Tests;

/// <summary>
/// The picture of README shows what the program says today. Nobody can read a picture, so beside it stand its words, and which picture they were read
/// from. ACCEPT=1 writes them anew, but only for a new picture: a strip with the same bytes and other words is stale.
/// </summary>
public class ReadmePictureTests
{
    private static readonly string Picture = House.PathTo("docs", "pictures", "strip.png");
    private static readonly string Twin = House.PathTo("docs", "pictures", "strip.txt");

    [Fact]
    public void ThePicture_SaysWhatTheProgramSays()
    {
        var bytes = "picture " + Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Picture)));
        string[] now = [bytes, .. Words()];
        var before = File.Exists(Twin) ? File.ReadAllLines(Twin) : [];
        if (Environment.GetEnvironmentVariable("ACCEPT") == "1" && bytes != before.FirstOrDefault())
        {
            File.WriteAllLines(Twin, now);
            before = now;
        }

        Assert.True(now.SequenceEqual(before), $"docs/pictures/strip.png is stale, or strip.txt is not of it. Take the strip of the page /recipes/potato-rolls?kitchen=winter-cottage&dough=26C&free=potato,scald anew, then ACCEPT=1. It says now:\n{string.Join('\n', now)}");
    }

    /// <summary>The strip and the text of a rehearsal tell the same times.</summary>
    [Fact]
    public void TheWordsBesideIt_AreThoseOfARehearsal()
    {
        var told = Run.Of("rehearse", Recipe, "--kitchen", Kitchen, "--dough", "26C", "--free", "potato,scald").Output.Replace('\u00a0', ' ');
        var words = File.ReadAllLines(Twin);
        var total = words.Single(text => text.StartsWith("after ", StringComparison.Ordinal))["after ".Length..];
        var bulk = words[Array.IndexOf(words, "Bulk") + 1].Replace(" h ", ":", StringComparison.Ordinal).Replace(" min", "", StringComparison.Ordinal);
        Assert.Contains(total, told, StringComparison.Ordinal);
        Assert.Matches($@"\bBulk +{bulk} ", told);
    }

    private static string Recipe => House.PathTo("demo", "recipes", "potato-rolls.yaml");

    private static string Kitchen => House.PathTo("demo", "kitchens", "winter-cottage.yaml");

    /// <summary>Of the strip as the program writes it into a file, without its scale of warmth.</summary>
    private static IEnumerable<string> Words()
    {
        var file = System.IO.Path.Combine(System.IO.Path.GetTempPath(), System.IO.Path.GetRandomFileName() + ".svg");
        try
        {
            var run = Run.Of("picture", Recipe, "--of", "strip", "--kitchen", Kitchen, "--dough", "26C", "--free", "potato,scald", "--out", file);
            Assert.True(File.Exists(file), run.Output + run.Messages);
            XNamespace svg = "http://www.w3.org/2000/svg";
            return [.. XElement.Load(file).Descendants(svg + "text").Select(Text)];
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string Text(XElement text) => string.Join(' ', text.Elements().Any() ? text.Elements().Select(span => span.Value) : [text.Value]).Replace('\u00a0', ' ');
}
