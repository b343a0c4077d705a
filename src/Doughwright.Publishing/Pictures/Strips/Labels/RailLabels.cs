using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>The two rails of the wide strip, and what stands at their right end and over it.</summary>
internal static class RailLabels
{
    private const double HandsLine = 54;
    private const double FiresLine = 84;
    private const double BlockHeight = 12;
    private const double FireHeight = 16;
    private const double Narrowest = 3;

    private static double X => WideLayout.Right + 4;

    public static void Draw(Sheet sheet)
    {
        var (bench, room) = (sheet.Bench + sheet.Drop, sheet.Frame.Width - X);
        foreach (var (from, to) in Rails.Hands(sheet.Plan))
        {
            var (a, b) = (sheet.Place(from), sheet.Place(to));
            sheet.Svg.Rect("hand", a, bench + HandsLine - 10, Math.Max(Narrowest, b - a - 1), BlockHeight);
            sheet.Placer.Block(new(a, bench + HandsLine - 10, Math.Max(a + Narrowest, b), bench + HandsLine + 2));
        }

        sheet.Svg.Line("rail", 0, bench + HandsLine + 2, WideLayout.Right, bench + HandsLine + 2);
        sheet.Svg.Line("rail", 0, bench + FiresLine + 8, WideLayout.Right, bench + FiresLine + 8);
        Rails.DrawFires(sheet.Canvas, sheet.Plan, -(FiresLine + 8 + sheet.Drop), FireHeight - (FiresLine + 8 + sheet.Drop));
        Total(sheet, bench + HandsLine, sheet.Words.Say("strip-hands"), sheet.Words.Voice.Text(sheet.Plan.Rehearsal.Hands), room);
        if (Rails.Fires(sheet.Plan).Any())
        {
            Total(sheet, bench + FiresLine + 6, sheet.Words.Say("strip-fires"), sheet.Words.Voice.Text(sheet.Words.FireTime), room);
        }

        foreach (var fire in Rails.Fires(sheet.Plan))
        {
            sheet.Placer.Block(new(sheet.Place(fire.Step.Start), bench + FiresLine + 8 - FireHeight, sheet.Place(fire.Step.EndOrStart), bench + FiresLine + 8));
        }
    }

    /// <summary>What each hob and oven is at: right of the hob, left of where the oven is put on.</summary>
    public static void Fires(Sheet sheet)
    {
        var y = sheet.Bench + sheet.Drop + FiresLine + 4;
        foreach (var fire in Rails.Fires(sheet.Plan))
        {
            var (left, right) = (sheet.Place(fire.Step.Start) - 8, sheet.Place(fire.Step.EndOrStart) + 8);
            var words = fire.Step.Kind is Engine.Recipes.StepKind.Bake or Engine.Recipes.StepKind.Preheat
                ? sheet.Words.Dial(fire.Step)
                : fire.Hot is { } hot ? sheet.Words.Say("strip-hob", ("warmth", hot)) : null;
            var isHeated = sheet.Plan.Steps.Any(step => step.Kind == Engine.Recipes.StepKind.Preheat && step != fire.Step && Math.Abs(step.EndOrStart - fire.Step.Start) < 10);
            if (words is not null && !isHeated
                && !(fire.Step.Kind == Engine.Recipes.StepKind.Preheat && sheet.Placer.Put(Type.Value, left, y, words, Anchor.End))
                && !sheet.Placer.Put(Type.Value, right, y, words))
            {
                sheet.Placer.Put(Type.Value, left, y, words, Anchor.End);
            }
        }
    }

    /// <summary>What comes out at the end.</summary>
    public static void Outcome(Sheet sheet)
    {
        // On whole units, so that small figures stand sharp whoever draws them.
        var (x, foot) = (Math.Ceiling(sheet.Body is { } body ? sheet.Place(body.End) : WideLayout.Right) + 10, Math.Floor(sheet.Bench) - 10);
        var room = sheet.Frame.Width - x;
        var name = Wrapping.OrCut(sheet.Words.Outcome, Type.Head, room, most: 2) ?? [];
        string?[] figures =
        [
            sheet.Words.Comes is { } mass ? sheet.Words.Text(mass) : null,
            sheet.Words.IsBeforeBaking ? sheet.Words.Say("strip-before-baking") : null,
            sheet.Words.AddedAfter is { } added ? sheet.Words.Say("strip-added-after", ("mass", added)) : null,
            sheet.Words.Ready,
        ];
        (Type Type, string Text)[] said =
        [
            .. name.Select(text => (Type.Head, text)),
            .. figures.OfType<string>().SelectMany(text => Wrapping.Of(text, Type.Value, room) ?? [text]).Select(text => (Type.Value, text)),
        ];
        sheet.Placer.PutLines(x, [.. said.Where(line => line.Text.Length > 0).Select((line, i) => (line.Type, foot - (16 * (Math.Max(4, said.Length) - 1 - i)), line.Text))]);
    }

    private static void Total(Sheet sheet, double y, string name, string value, double room)
    {
        sheet.Placer.Put(Type.Head, X + 4, y - 9, Type.Head.Fit(name, room - 4) ?? "");
        sheet.Placer.Put(Type.Value, X + 4, y + 6, value);
    }
}
