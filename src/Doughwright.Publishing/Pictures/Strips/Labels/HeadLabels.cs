namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>The heads over the dough: an upright where each step begins, with its name, how long it takes and what it aims at.</summary>
internal static class HeadLabels
{
    /// <summary>Lines of the heads, and upper end of their uprights, where none stands over the others.</summary>
    private const double NameLine = 52;
    private const double TimeLine = 68;
    private const double AimLine = 84;
    private const double EdgeTop = 40;

    /// <summary>A head narrower than this has no third line.</summary>
    private const double ForThree = 46;

    /// <summary>A head narrower than this keeps its name only.</summary>
    private const double ForTwo = 30;

    /// <summary>Line on which the name of a head stands.</summary>
    public static double LineOf(Sheet sheet, Head head) => NameLine + sheet.Lift - (Head.RowHeight * head.Row);

    public static void Edges(Sheet sheet)
    {
        foreach (var head in sheet.Heads)
        {
            var top = EdgeTop + sheet.Lift - (Head.RowHeight * head.Row);
            sheet.Svg.Line("edge", head.X, top, head.X, sheet.Bench);
            sheet.Placer.Forbid(new(head.X - 0.5, top, head.X + 0.5, sheet.Bench));
        }
    }

    public static void Draw(Sheet sheet)
    {
        foreach (var head in sheet.Heads)
        {
            // Without a word: no word stands across an upright, and the table of the method has it.
            if (head.Name is not { } name || !sheet.Placer.Put(Type.Head, head.IsLeft ? head.Right : head.Left, LineOf(sheet, head), name, head.Anchor))
            {
                continue;
            }

            var (x, room) = (head.X + Head.Beside, head.Row > 0 ? 0 : head.Width - Head.Beside - 1);
            if (head.Width >= ForTwo && Type.Value.Width(sheet.Words.Time(head.Step)) <= room)
            {
                sheet.Placer.Put(Type.Value, x, TimeLine + sheet.Lift, sheet.Words.Time(head.Step));
            }

            if (head.Width >= ForThree && sheet.Words.Aim(head.Step) is { } aim && Type.Value.Width(aim) <= room)
            {
                sheet.Placer.Put(Type.Value, x, AimLine + sheet.Lift, aim);
            }
        }
    }
}
