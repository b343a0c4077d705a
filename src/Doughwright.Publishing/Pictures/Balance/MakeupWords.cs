using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>Names and figures beside the ribbons and in their table.</summary>
internal static class MakeupWords
{
    /// <summary>"Water", or "Water, at least" where a line's water is not known.</summary>
    public static string Name(Matter matter, Makeup makeup, Voice voice) =>
        matter != Matter.Unknown && MatterOf.IsAtLeast(makeup, matter) ? voice.Say("makeup.at-least", ("name", Plain(matter, voice))) : Plain(matter, voice);

    public static string Plain(Matter matter, Voice voice) => voice.Words[$"makeup.{Voice.Kebab(matter.ToString())}"];

    public static string Value(Matter matter, MakeupFigures figures, Voice voice) => figures.Percent(matter) is { } percent and > 0
        ? voice.Say("makeup.grams-percent", ("grams", Show.Number(figures.Total(matter), 1)), ("percent", Show.Number(percent, 1)))
        : voice.Say("makeup.grams", ("grams", Show.Number(figures.Total(matter), 1)));

    public static string Line(MakeupRow row, Formula formula) => Capital.Of(
        formula.Components.Where(component => component.Kind == Engine.Recipes.ComponentKind.Dough)
            .SelectMany(component => component.Lines)
            .FirstOrDefault(line => line.Id == row.Line)?.Name ?? row.Line);
}
