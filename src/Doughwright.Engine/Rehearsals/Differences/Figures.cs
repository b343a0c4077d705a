using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Differences;

/// <summary>The figures of one rehearsal by name, in the order of its steps.</summary>
internal static class Figures
{
    /// <summary>A figure, or why there is none.</summary>
    public readonly record struct Told(double? Value, Unknown? Why);

    public static Dictionary<Figure, Told> Of(Rehearsal rehearsal)
    {
        var told = new Dictionary<Figure, Told> { [new(FigureKind.Boils)] = new(rehearsal.Boils.Celsius, null) };
        foreach (var component in rehearsal.Components)
        {
            told[new(FigureKind.Mixed, component.Id)] = Known(component.Mixed?.Likely.Celsius);
        }

        foreach (var step in rehearsal.Steps)
        {
            told[new(FigureKind.Start, step.Id)] = Known(step.Start?.Minutes);
            told[new(FigureKind.Minutes, step.Id)] =
                step.Time is null && step.SettlesAt is not null ? new(null, Unknown.NeverEnds) : Known(step.Time?.Likely.Minutes);
            told[new(FigureKind.StartTemperature, step.Id)] = Known(step.StartTemperature?.Celsius);
            told[new(FigureKind.EndTemperature, step.Id)] = Known(step.EndTemperature?.Celsius);
            if (step.Dial is { } dial)
            {
                told[new(FigureKind.Dial, step.Id)] = Known(dial.Here.Celsius);
            }
        }

        foreach (var step in rehearsal.Steps.Where(step => step.Kind == StepKind.Mix))
        {
            var heat = rehearsal.HeatOf(step.Id);
            foreach (var line in rehearsal.Formula.Components.First(component => component.Id == step.Component).Lines)
            {
                // A part may be mixed twice: a mix that does not take up the line says nothing of how warm it went in.
                var (figure, goesIn) = (new Figure(FigureKind.GoesIn, Request.LineOf(step.Component, line.Id)), heat?.Shares.FirstOrDefault(share => share.Line == line.Id)?.GoesIn?.Celsius);
                if (goesIn is not null || !told.ContainsKey(figure))
                {
                    told[figure] = Known(goesIn);
                }
            }
        }

        told[new(FigureKind.Hands)] = Known(rehearsal.Hands.Minutes);
        told[new(FigureKind.Total)] = Known(rehearsal.Total?.Likely.Minutes);
        return told;
    }

    private static Told Known(double? value) => new(value, value is null ? Unknown.NotKnown : null);
}
