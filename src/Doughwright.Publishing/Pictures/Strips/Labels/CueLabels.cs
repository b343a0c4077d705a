using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Marks;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Combs with their cue beside them: left, or right where the left is taken, or a line lower.</summary>
internal static class CueLabels
{
    private const double Line = 17;
    private const double Lower = 34;
    private const double Beside = 8;

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
        foreach (var step in CombMarks.Ending(sheet.Layout))
        {
            var (low, _, high) = CombMarks.Places(sheet.Frame, step);
            var cue = sheet.Words.Cue(step);
            foreach (var words in cue is null ? [sheet.Words.EndRange(step)] : Wordings(cue).Select(shorter => sheet.Words.CueWithRange(shorter, step)).Append(sheet.Words.EndRange(step)))
            {
                if (sheet.Placer.Put(Type.Cue, low - Beside, sheet.Bench + Line, words, Anchor.End)
                    || sheet.Placer.Put(Type.Cue, high + Beside, sheet.Bench + Line, words)
                    || sheet.Placer.Put(Type.Cue, high, sheet.Bench + Lower, words, Anchor.End)
                    || sheet.Placer.Put(Type.Cue, low, sheet.Bench + Lower, words))
                {
                    break;
                }
            }
        }
    }

    /// <summary>The cue, whole and ever shorter.</summary>
    private static IEnumerable<string> Wordings(string cue)
    {
        yield return cue;
        for (var room = Type.Cue.Width(cue) - 30; room > 40; room -= 30)
        {
            if (Type.Cue.Fit(cue, room) is { } shorter)
            {
                yield return shorter;
            }
        }
    }
}
