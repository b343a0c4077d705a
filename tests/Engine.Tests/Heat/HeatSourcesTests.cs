using System.Text.Json;
using System.Text.RegularExpressions;

namespace Doughwright.Engine.Tests.Heat;

public class HeatSourcesTests
{
    [Fact]
    public void Sources_OfHeat_CarryOneOfTheThreeMarks()
    {
        using var stream = typeof(Doughwright.Engine.Quantities.Mass).Assembly.GetManifestResourceStream("sources.heat.json");
        using var document = JsonDocument.Parse(stream!);
        var entries = document.RootElement.EnumerateArray().ToArray();
        Assert.All(entries, entry => Assert.Contains(
            entry.GetProperty("mark").GetString(), new[] { "read", "from memory", "common practice, no source" }));
        var ids = entries.Select(entry => entry.GetProperty("id").GetString()!).ToArray();
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(ids, id => Assert.Matches(new Regex("^[a-z0-9-]+$"), id));
    }
}
