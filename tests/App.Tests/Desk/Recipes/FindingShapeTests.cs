using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Tests.Wording;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>Which mark a finding bears.</summary>
public sealed class FindingShapeTests
{
    /// <summary>Of published cases, of a refused edit, of the texts of notes and ingredients: none of them is a finding of a recipe with a mark.</summary>
    private static readonly string[] Elsewhere = ["case-", "edit-", "note-", "ingredient-"];

    [Fact]
    public void KindsOfWhatIsMissing_AreKindsThereAre() =>
        Assert.Empty(FindingShape.Missing.Except(KindScan.Findings().Keys));

    [Fact]
    public void KindsThatHideAFigure_AreKindsThereAre() =>
        Assert.Empty(FindingShape.Hides.Except(KindScan.Findings().Keys));

    [Fact]
    public void EveryKindNamedMissing_IsMissing() =>
        Assert.Empty(KindScan.Findings().Keys.Where(kind => kind.EndsWith("-missing", StringComparison.Ordinal) && kind is not ("colon-missing" or "id-missing" or "number-missing") && !Elsewhere.Any(start => kind.StartsWith(start, StringComparison.Ordinal))).Except(FindingShape.Missing));

    [Theory]
    [InlineData("cue-missing", Grade.Warning, MarkShape.Missing)]
    [InlineData("circle", Grade.Error, MarkShape.Wrong)]
    [InlineData("dough-temperature-missed", Grade.Warning, MarkShape.Risky)]
    [InlineData("allergens", Grade.Hint, MarkShape.Note)]
    public void Marks_GoByKindThenByGrade(string kind, Grade grade, MarkShape shape) =>
        Assert.Equal(shape, FindingShape.Of(new() { Kind = kind, Grade = grade, Place = "" }));
}
