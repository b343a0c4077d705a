using System.Text.RegularExpressions;
using Doughwright.Engine.Cases;
using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Cases;

/// <summary>docs/evidence.md has a section for every kind, and in it every key, every quantity and what it is given in.</summary>
public partial class KindsDocTests
{
    private static readonly IReadOnlyDictionary<string, string> Sections = Section().Split(Texts.Read("docs/evidence.md"))
        .Skip(1).Chunk(2).ToDictionary(pair => pair[0], pair => pair[1]);

    public static TheoryData<string> Kinds => [.. CaseKinds.All.Select(kind => kind.Name)];

    [Theory, MemberData(nameof(Kinds))]
    public void Kind_IsDocumented(string name)
    {
        var kind = CaseKinds.Find(name)!;
        var section = Sections[name == "warming" ? "cooling" : name];
        Assert.All(kind.Keys, key => Assert.Contains($"`{key}`", section));
        Assert.All(kind.Quantities, quantity => Assert.Contains($"`{quantity.Name}`", section));
    }

    [Fact]
    public void Page_TellsOfNoKindThatIsNotThere() => Assert.Empty(Sections.Keys.Except(CaseKinds.All.Select(kind => kind.Name)));

    [Fact]
    public void EveryUnit_IsDocumented()
    {
        var page = Texts.Read("docs/evidence.md");
        Assert.All(Dimension.All.SelectMany(dimension => dimension.Units).Where(unit => unit.Symbol.Length > 0), unit => Assert.Contains($"`{unit.Symbol}`", page));
    }

    [GeneratedRegex(@"^### `([a-z ]+)`.*$", RegexOptions.Multiline)]
    private static partial Regex Section();
}
