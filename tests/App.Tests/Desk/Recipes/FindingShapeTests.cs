using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Tests.Wording;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>Which mark a finding bears.</summary>
public sealed class FindingShapeTests
{
    /// <summary>Of published cases, which never stand on the desk.</summary>
    private const string OfACase = "case-";

    /// <summary>What a refused edit says: it stands at its field and changes nothing in the recipe.</summary>
    private const string OfAnEdit = "edit-";

    [Fact]
    public void KindsOfWhatIsMissing_AreKindsThereAre() =>
        Assert.Empty(FindingShape.Missing.Except(KindScan.Findings().Keys));

    [Fact]
    public void KindsThatHideAFigure_AreKindsThereAre() =>
        Assert.Empty(FindingShape.Hides.Except(KindScan.Findings().Keys));

    [Fact]
    public void EveryKindNamedMissing_IsMissing() =>
        Assert.Empty(KindScan.Findings().Keys.Where(kind => kind.EndsWith("-missing", StringComparison.Ordinal) && kind is not ("colon-missing" or "id-missing" or "number-missing") && !kind.StartsWith(OfACase, StringComparison.Ordinal) && !kind.StartsWith(OfAnEdit, StringComparison.Ordinal)).Except(FindingShape.Missing));

    [Theory]
    [InlineData("cue-missing", Grade.Warning, MarkShape.Missing)]
    [InlineData("circle", Grade.Error, MarkShape.Wrong)]
    [InlineData("dough-temperature-missed", Grade.Warning, MarkShape.Risky)]
    [InlineData("allergens", Grade.Hint, MarkShape.Note)]
    public void Marks_GoByKindThenByGrade(string kind, Grade grade, MarkShape shape) =>
        Assert.Equal(shape, FindingShape.Of(new() { Kind = kind, Grade = grade, Place = "" }));
}
