using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What resizing changed, beside the text: lines before and after, whole pieces to choose, what it fits, what was measured, findings.</summary>
internal sealed class ResizeText
{
    private readonly Resized resized;
    private readonly Voice voice;
    private readonly Page page = new();

    private ResizeText(Resized resized, Voice voice) => (this.resized, this.voice) = (resized, voice);

    public static string Write(Resized resized, IReadOnlyList<Finding> findings, Voice voice)
    {
        var text = new ResizeText(resized, voice);
        if (resized is { After: { } after, Factor: { } factor })
        {
            text.WriteHead(after, factor);
            text.WriteLines();
            text.WriteMakes();
            text.WriteChoices();
            text.WriteFits();
            text.WriteMeasures();
        }
        else
        {
            text.page.Paragraph(voice.Say("resize.refused", ("title", resized.Before.Recipe.Title)));
        }

        FindingsText.WriteSection(text.page, findings, voice);
        return text.page.ToString();
    }

    private void WriteHead(Engine.Formulas.Formula after, double factor)
    {
        page.Paragraph(after.Recipe.Title);
        page.Paragraph(voice.Say("resize.head", ("factor", factor), ("before", resized.Before.Dough), ("after", after.Dough)));
        if (after.Recipe.Make is { } make)
        {
            page.Paragraph(voice.Say("resize.makes", ("pieces", make.Pieces), ("what", make.What), ("piece", make.PieceMass)));
        }

        page.Paragraph(voice.Say("resize.rounded", ("scale", resized.Scale)));
    }

    private void WriteLines()
    {
        page.Gap();
        var table = new Table(
            new(voice.Words["head.part"], Align.Left),
            new(voice.Words["head.ingredient"], Align.Left),
            new(voice.Words["resize.head-before"], Align.Right),
            new(voice.Words["resize.head-after"], Align.Right),
            new(voice.Words["resize.head-error"], Align.Right),
            new(voice.Words["resize.head-error-percent"], Align.Right));
        foreach (var line in resized.Lines)
        {
            var part = resized.Before.FindComponent(line.Component)?.Name ?? line.Component;
            var isExact = Math.Abs(line.Error.Grams) < 0.005;
            table.Add(
                part,
                line.Name,
                voice.Text(line.Before),
                line.Typed.Replace(' ', '\u00a0'),
                isExact ? "" : Signed(line.Error.Grams, 2, "\u00a0g"),
                isExact || line.ErrorPercent is not { } percent ? "" : Signed(percent.Value, 1, "\u00a0%"));
        }

        table.WriteTo(page);
    }

    private void WriteMakes()
    {
        if (resized.Makes is [_, var other])
        {
            page.Gap();
            page.Paragraph(voice.Say("resize.other-make", ("pieces", other.Pieces), ("what", other.What), ("piece", other.PieceMass)));
        }
    }

    private void WriteChoices()
    {
        foreach (var choice in resized.Choices)
        {
            page.Heading(voice.Say("resize.choice", ("name", choice.Name), ("needed", choice.Needed), ("piece", choice.Piece), ("mass", choice.Piece * choice.Needed)));
            foreach (var option in choice.Options)
            {
                var shift = option.Shift;
                page.Paragraph(
                    voice.Say(
                        "resize.option",
                        ("line", choice.Line),
                        ("count", option.Count),
                        ("mass", option.Mass),
                        ("dough", Signed(shift.Dough.Grams, 0, "\u00a0g")),
                        ("water", Points(shift.TrueWater)),
                        ("sugar", Points(shift.TrueSugar)),
                        ("fat", Points(shift.TrueFat)),
                        ("hydration", Points(shift.Hydration)),
                        ("whole", option.WholeDough)),
                    2,
                    2);
            }
        }
    }

    private void WriteFits()
    {
        if (resized.Fits.Count == 0)
        {
            return;
        }

        page.Heading(voice.Words["resize.fits"]);
        foreach (var fit in resized.Fits)
        {
            var verdict = Voice.Kebab(fit.Verdict.ToString());
            page.Paragraph(
                voice.Say(
                    $"resize.fit-{Voice.Kebab(fit.Kind.ToString())}.{verdict}",
                    ("step", fit.Name),
                    ("held", fit.HeldBefore),
                    ("holds", fit.HoldsNow),
                    ("needs", fit.Needs),
                    ("room", fit.Has is { } has ? voice.Say("resize.room", ("has", has)) : voice.Words["resize.room-not-said"]),
                    ("needed", fit.Needed),
                    ("per", fit.PerTray),
                    ("there", fit.There),
                    ("loads", fit.Loads)),
                2,
                2);
        }
    }

    private void WriteMeasures()
    {
        if (resized.Measures.Count == 0)
        {
            return;
        }

        page.Heading(voice.Words["resize.measures"]);
        var table = new Table(
            new(voice.Words["head.step"], Align.Left),
            new(voice.Words["resize.head-measured"], Align.Right),
            new(voice.Words["resize.head-now"], Align.Right),
            new("", Align.Left));
        foreach (var measure in resized.Measures)
        {
            object? was = measure.Time is { } time ? time : measure.Temperature;
            object? now = measure.NewTime is { } newTime ? newTime : measure.NewTemperature;
            table.Add(
                measure.Name,
                was is null ? "" : voice.Text(was),
                now is null ? voice.Words["not-known"] : voice.Text(now),
                voice.Words[measure.Stands ? "resize.stands" : "resize.gone"]);
        }

        table.WriteTo(page);
    }

    private string Points(double? points) => points is { } known ? Signed(known, 1, "") : voice.Words["not-known-short"];

    private string Signed(double value, int decimals, string unit)
    {
        var number = Show.Number(value, decimals) + unit;
        return value > 0 && number.Any(letter => letter is > '0' and <= '9') ? voice.Say("resize.more", ("figure", number)) : number;
    }
}
