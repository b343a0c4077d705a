using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>The pictures of a page as markup; null where what they show is not known.</summary>
internal sealed class PictureSet(Figures figures)
{
    public string? Wide => null;

    public string? Tall => null;

    public string? Heat(string step) => null;

    public FigureTable? HeatTable(string step) => null;

    public string? Rise(string step) => null;

    public bool HasHomeRise(string step) => false;

    public string? Balance => null;

    public FigureTable? BalanceTable => null;
}
