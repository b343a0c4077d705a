using Doughwright.Publishing.Pictures.Strips.Labels;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>Everything on and over the bench, the same for both directions.</summary>
internal static class StripMarks
{
    public static void Draw(Sheet sheet)
    {
        if (sheet.Body is { } dough)
        {
            BodyMarks.Draw(sheet.Canvas, dough, sheet.Plan);
        }

        foreach (var strand in sheet.Strands)
        {
            StrandMarks.Draw(sheet.Canvas, strand, sheet.Words.Voice.Measures);
        }

        if (sheet.Body is { } body)
        {
            BodyMarks.Layer(sheet.Canvas, body);
            BodyMarks.Outline(sheet.Canvas, body);
            BodyMarks.Steam(sheet.Canvas, body, sheet.Plan);
            foreach (var wash in sheet.Plan.Washes)
            {
                WashMarks.Draw(sheet.Canvas, sheet.Layout, body, wash);
            }
        }
    }
}
