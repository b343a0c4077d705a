using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The mark of a finding by its grade.</summary>
internal static class FindingShapes
{
    public static MarkShape Of(Finding finding) => finding.Grade switch
    {
        Grade.Error => MarkShape.Wrong,
        Grade.Warning => MarkShape.Risky,
        _ => MarkShape.Note,
    };
}
