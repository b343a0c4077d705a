using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What resizing changed, beside the text: lines before and after, whole pieces to choose, what it fits, what was measured, findings.</summary>
internal sealed class ResizeText
{
    private readonly Resized resized;
    private readonly Voice voice;
    private readonly ResizeWords words;
    private readonly Page page = new();

    private ResizeText(Resized resized, Voice voice) => (this.resized, this.voice, words) = (resized, voice, new(resized, voice));

    public static string Write(Resized resized, Judgement findings, Voice voice)
    {
        var text = new ResizeText(resized, voice);
        if (resized.Recipe is { } recipe)
        {
            text.page.Paragraph(recipe.Title);
            foreach (var said in text.words.Head())
            {
                text.page.Paragraph(said);
            }

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
            table.Add(words.PartOf(line), line.Name, voice.Text(line.Before), words.Now(line), words.Error(line), words.ErrorPercent(line));
        }

        table.WriteTo(page);
    }

    private void WriteMakes()
    {
        if (resized.Makes is [_, var other])
        {
            page.Gap();
            page.Paragraph(words.Makes("resize.other-make", other));
        }
    }

    private void WriteChoices()
    {
        foreach (var choice in resized.Choices)
        {
            page.Heading(words.Choice(choice));
            foreach (var option in choice.Options)
            {
                page.Paragraph(words.Shift(choice, option), 2, 2);
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
            page.Paragraph(words.Fit(fit), 2, 2);
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
            new(voice.Words["head.range"], Align.Right),
            new("", Align.Left));
        foreach (var measure in resized.Measures)
        {
            table.Add(measure.Name, words.Was(measure), words.NowOf(measure), words.Range(measure), words.Stands(measure));
        }

        table.WriteTo(page);
    }
}
