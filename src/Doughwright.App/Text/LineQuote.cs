using Doughwright.Engine.Recipes;

namespace Doughwright.App.Text;

/// <summary>A line of a text as it stands, with its number, and a caret under the column. A long line is shown around it.</summary>
internal readonly record struct LineQuote(string Line, string Caret)
{
    public static LineQuote Of(string line, Position position)
    {
        var margin = FormattableString.Invariant($"{position.Line,6} | ");
        var room = Page.Width - margin.Length - 1;
        var column = Math.Min(position.Column - 1, line.Length);
        var from = Page.WidthOf(line) <= room ? 0 : Math.Max(0, column - (room / 3));
        var shown = from == 0 ? line : "…" + line[(from + 1)..];
        while (Page.WidthOf(shown) > room)
        {
            shown = shown[..^2] + "…";
        }

        var before = Page.WidthOf(shown[..Math.Min(column - from, shown.Length)]);
        return new(margin + shown, new string(' ', margin.Length - 2) + "| " + new string(' ', before) + "^");
    }
}
