using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>How warm the free things must go in: the offered answer first, each with what delicate things meet.</summary>
internal sealed class SolutionText(Rehearsal rehearsal, Voice voice)
{
    public void WriteTo(Page page, Temperature asked)
    {
        page.Heading(voice.Say("solve-head", ("dough", asked)));
        var table = new Table(
            new(voice.Words["head.warm"], Align.Left),
            new(voice.Words["head.to"], Align.Right, voice.DegreeUnit.Trim('\u00a0')),
            new(voice.Words["head.range"], Align.Left, voice.DegreeUnit.Trim('\u00a0')),
            new(voice.Words["head.meets"], Align.Left));
        foreach (var solution in rehearsal.Solutions)
        {
            table.Add(
                What(solution),
                solution.Warmth is { } warmth ? voice.Degrees(warmth.Likely, asked: true) : solution.Ice is null ? voice.Words["none-does-it"] : voice.Words["ice"],
                solution.Warmth is { } spread ? voice.Range(spread.Low, spread.High, asked: true) : "",
                string.Join(voice.Words["list-comma"], solution.Meets.Select(Meets)));
            if (solution.Ice is { } ice)
            {
                table.Note(voice.Say("ice-part", ("ice", ice.Likely), ("tap", rehearsal.Kitchen.Tap)));
            }

            if (solution.TradeRule is { } rule)
            {
                table.Note(rule.Celsius > 0 ? voice.Say("trade-rule", ("water", rule)) : voice.Words["trade-rule-ice"]);
            }

            if (!solution.Offered)
            {
                table.Note(voice.Words[solution.Warmth is null && solution.Ice is null ? "not-possible" : "not-advised"]);
            }
        }

        table.WriteTo(page);
    }

    private string What(Solution solution)
    {
        var names = voice.List(solution.Lines.Select(NameOf));
        return solution.Lines.Count == 1 && rehearsal.Solutions.Count > 1 ? voice.Say("alone", ("name", names)) : names;
    }

    private string NameOf(string id) =>
        rehearsal.Recipe.Components.SelectMany(component => component.Lines).FirstOrDefault(line => line.Id == id)?.Name ?? id;

    private string Meets(Meeting meeting) => voice.Say("meets", ("what", voice.Words.Find($"delicate.{meeting.What}") ?? meeting.What), ("temperature", Show.TemperatureAsked(meeting.Temperature, voice.Measures)));
}
