using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Family;

/// <summary>The rope from above down, and what leaves it to the right under the knot that it leaves.</summary>
internal sealed class TallFamily(FamilyLine line, Voice voice)
{
    private const double Width = 340;
    private const double Rope = 20;
    private const double Thickness = 5.5;
    private const double Turn = 53;
    private const double Top = 16;
    private const double Row = 54;
    private const double OffshootRow = 50;
    private const double Names = 44;
    private const double Branch = 64;
    private const double Bar = 11;

    private static readonly Lettering Day = new("sh", Face.LabelBold, 15.5);
    private static readonly Lettering Picked = new("slipt", Face.LabelBold, 15.5);
    private static readonly Lettering Said = new("sv", Face.Label, 15.5);

    public string Draw(string id)
    {
        var (marks, names) = (new Svg(), new Svg());
        var y = Top;
        foreach (var offshoot in line.Offshoots.Where(offshoot => offshoot.At < 0))
        {
            Leave(marks, names, offshoot, y - 12, y + 16);
            y += OffshootRow;
        }

        for (var index = 0; index < line.Knots.Count; index++)
        {
            Knot(marks, names, line.Knots[index], y);
            y += Row;
            foreach (var offshoot in line.Offshoots.Where(offshoot => (int)Math.Floor(offshoot.At) == index).OrderBy(offshoot => offshoot.At))
            {
                Leave(marks, names, offshoot, offshoot.At == index ? y - Row : y - 20, y);
                y += OffshootRow;
            }
        }

        var svg = new Svg();
        var end = y - Row + 28;
        foreach (var second in new[] { false, true })
        {
            svg.Path("yarn", Yarn.Strand(end - 4, at => (Rope, 4 + at), (1, 0), Thickness, Turn, second));
        }

        svg.Raw(marks.ToString()).Raw(names.ToString());
        return svg.Picture("strip family family-tall", Width, y - 6, id, FamilyPicture.Title(line, voice), FamilyPicture.Description(line, voice));
    }

    private static void Knot(Svg marks, Svg names, FamilyKnot knot, double y)
    {
        marks.Line(knot.IsPicked ? "knot pickd" : "knot", Rope - Bar, y, Rope + Bar, y);
        var lettering = knot.IsPicked ? Picked : Day;
        names.Text(lettering.Class, Names, y + 1, lettering.Fitted(knot.Day, Width - Names));
        if (knot.Said.Length > 0)
        {
            names.Text(Said.Class, Names, y + 20, Said.Fitted(knot.Said, Width - Names));
        }
    }

    private static void Leave(Svg marks, Svg names, FamilyOffshoot offshoot, double from, double y)
    {
        var height = y - from;
        FamilyPicture.Offshoot(marks, height, at => (Rope + ((Branch - 16 - Rope) * FamilyPicture.Eased(at / height)), from + at), (1, 0));
        names.Text(Day.Class, Branch, y + 1, Day.Fitted(offshoot.Title, Width - Branch));
        if (offshoot.But.Length > 0)
        {
            names.Text(Said.Class, Branch, y + 20, Said.Fitted(offshoot.But, Width - Branch));
        }
    }
}
