using System.Globalization;
using System.Text.RegularExpressions;
using Doughwright.Publishing.Pages.Method;

namespace Doughwright.Publishing.Pages.Style;

/// <summary>The two columns of a printed page as blocks that do not break, laid onto sheets as a browser lays them.</summary>
internal sealed partial class PrintColumns
{
    private const int LettersLeft = 56;
    private const int LettersRight = 71;

    /// <summary>The width of paper that the heights were measured at.</summary>
    private const double Width = 710;

    private readonly PageContent content;
    private readonly PrintSetting setting;

    private PrintColumns(PageContent content, PrintSetting setting) => (this.content, this.setting) = (content, setting);

    /// <summary>How far down the longer column ends, for each paper.</summary>
    public static IEnumerable<double> LengthsOf(PageContent content, Arrangement arrangement, IEnumerable<(double Sheet, double More)> papers)
    {
        var columns = new PrintColumns(content, arrangement is Arrangement.Close or Arrangement.CloseNotesLeft ? PrintSetting.Close : PrintSetting.Roomy);
        return [.. papers.Select(paper => paper.More * columns.Length(paper.Sheet, arrangement is Arrangement.RoomyNotesLeft or Arrangement.CloseNotesLeft))];
    }

    private double Length(double sheet, bool notesLeft)
    {
        double[] before = [.. Parts(), .. Tools(), .. Rooms()];
        double[][] lists = [.. new[] { content.Swaps, content.Keeping, content.Cautions }.Where(list => list.Count > 0).Select(list => List(list, LettersLeft))];
        var (left, right) = (Top(), Flow(Top(), Steps(), sheet));
        left = Flow(left, before, sheet);
        // No part of a column starts higher on the page than what comes before it in the text.
        var highest = 0.0;
        foreach (var list in lists)
        {
            highest = Started(left, list[0], sheet);
            left = Flow(left, list, sheet);
        }

        foreach (var list in new[] { content.Unsettled, content.Basis }.Where(list => list.Count > 0))
        {
            if (notesLeft)
            {
                left = Flow(left, List(list, LettersLeft), sheet);
            }
            else
            {
                right = Flow(Math.Max(right, highest), List(list, LettersRight), sheet);
            }
        }

        return Math.Max(left, right);
    }

    /// <summary>Head and drawing of the day, over both columns.</summary>
    private double Top()
    {
        var facts = 7.2 + (15.3 * content.Facts.Sum(fact => PrintSetting.Lines(fact.Words, 44)));
        var words = 5 + (29 * PrintSetting.Lines(content.Title, 26)) + content.Lead.Sum(paragraph => 10 + (19.3 * PrintSetting.Lines(paragraph, 62)));
        return Math.Max(facts, words) + (content.Strip is { } strip ? (Width * HeightOf(strip.Wide)) + setting.Strip : 0);
    }

    /// <summary>Of a drawing, as a share of its width.</summary>
    private static double HeightOf(string svg) => Box().Match(svg) is { Success: true } box
        ? double.Parse(box.Groups[2].Value, CultureInfo.InvariantCulture) / double.Parse(box.Groups[1].Value, CultureInfo.InvariantCulture)
        : 0;

    private IEnumerable<double> Parts() => content.Parts.Select((part, i) =>
        28.7 + (part.Note is null ? 0 : 17) + part.Lines.Sum(HeightOf) + (i == 0 ? 54.7 : 0) + (i == content.Parts.Count - 1 && content.HasNoMeasure ? 18.4 : 0));

    private static double HeightOf(PageLine line) => 17.6 + Math.Max(
        15.7 * (PrintSetting.Lines(line.Name, 22) - 1),
        11.8 * (Math.Max(PrintSetting.Lines(line.First, 24), PrintSetting.Lines(line.Second, 24)) - 1));

    /// <summary>The tools stand in two columns of their own.</summary>
    private IEnumerable<double> Tools()
    {
        if (content.Tools.Count > 0)
        {
            yield return setting.Head + 4 + (content.Tools.Sum(tool => Item(tool.Name + " " + tool.Without, 27)) / 2);
        }

        if (content.Without.Count > 0)
        {
            yield return setting.Head + content.Without.Sum(lacking => Item(lacking.Name + " " + lacking.Without, LettersLeft));
        }
    }

    private IEnumerable<double> Rooms() => content.Rooms is not { } rooms ? []
        : [setting.Rooms + (setting.Room * rooms.Rows.Count) + (15.86 * PrintSetting.Lines(string.Join(' ', rooms.Notes), 64))];

    private double[] Steps() => [.. content.Steps.Select((step, i) => (i == 0 ? setting.Method : 0) + HeightOf(step))];

    private double HeightOf(PageStep step) => setting.Step
        + (setting.Time.Height * PrintSetting.Lines(step.Time, setting.Time.Letters))
        + (setting.Words.Height * step.Paragraphs.Append(step.Cue is { } cue ? content.DoneWhen + " " + cue : null).OfType<string>().Sum(text => PrintSetting.Lines(text, setting.Words.Letters)));

    private double[] List(IEnumerable<string> texts, int letters) => [.. texts.Select((text, i) => (i == 0 ? setting.Head : 0) + Item(text, letters))];

    private double Item(string text, int letters) => (setting.Item.Line * PrintSetting.Lines(text, letters)) + setting.Item.Around;

    private static double Flow(double from, IEnumerable<double> blocks, double sheet) => blocks.Aggregate(from, (at, block) => Started(at, block, sheet) + block);

    /// <summary>Where a block starts: on the next sheet where this one has no room for it.</summary>
    private static double Started(double at, double block, double sheet)
    {
        var room = sheet - (at % sheet);
        return block > room && block <= sheet ? at + room : at;
    }

    [GeneratedRegex("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"")]
    private static partial Regex Box();
}
