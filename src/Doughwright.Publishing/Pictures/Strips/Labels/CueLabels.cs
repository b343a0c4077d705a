using Doughwright.Publishing.Pictures.Strips.Marks;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Combs with their cue beside them or under them.</summary>
internal static class CueLabels
{
    public static void Combs(Sheet sheet)
    {
        foreach (var step in CombMarks.Ending(sheet.Layout))
        {
            CombMarks.Draw(sheet.Canvas, step);
            var (low, _, high) = CombMarks.Places(sheet.Frame, step);
            sheet.Placer.Block(new(low, sheet.Bench + 2, high, sheet.Bench + 22));
        }
    }

    public static void Draw(Sheet sheet)
    {
        foreach (var line in sheet.Cues)
        {
            sheet.Placer.Put(Type.Cue, line.X, sheet.Bench + (CuePlan.LineHeight * line.Line), line.Text, line.Anchor);
        }
    }
}
