using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>Lettering of pictures: in the colours of text only, readable where it stands, and whole.</summary>
[Trait("Category", "Slow")]
public class LetteringTests(House house)
{
    private static readonly string Measure = File.ReadAllText(Path.Join(AppContext.BaseDirectory, "Look", "Lettering.js"));

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task LetteringOfPictures_IsReadable(string path)
    {
        var faults = new List<string>();
        await foreach (var (visit, view) in Pages.Looks(house, path))
        {
            var seen = await visit.Ask<Seen>(Measure);
            faults.AddRange(seen.Faults.Select(fault => $"{view}: {fault}"));
            Assert.True(seen.Looked > 0 || !Pages.HasPictures(path), $"{view}: no lettering was looked at.");
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>What was looked at.</summary>
    private sealed record Seen(int Looked, IReadOnlyList<string> Faults);
}
