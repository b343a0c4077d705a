using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Whether the yeast in a bowl is alive once all is mixed. At the temperature where it dies nothing rises. Source: yeast-heat.</summary>
internal static class YeastLife
{
    /// <summary>What a bowl holds, mixed, with what became of its yeast.</summary>
    public static Portion Mixed(Portion mixed, Bowl bowl, IReadOnlyDictionary<string, Portion> parts)
    {
        var before = bowl.GoesOn is { } dough ? parts.GetValueOrDefault(dough) : null;
        var lives = before?.YeastLives == true || bowl.Delicates.Any(thing => thing.IsYeast);
        if (lives && mixed.Celsius is { } warm && warm.Central >= Places.YeastDies.Celsius)
        {
            return mixed with { YeastLives = false, YeastDied = Temperature.FromCelsius(warm.Central) };
        }

        var died = bowl.Lines.Select(line => line.UsesComponent is { } used ? parts.GetValueOrDefault(used)?.YeastDied : null).FirstOrDefault(at => at is not null);
        return mixed with { YeastLives = lives, YeastDied = lives ? null : died };
    }

    /// <summary>Told once, at the step that kills it; what is made with it only has no times.</summary>
    public static IEnumerable<Finding> Told(Step step, Portion mixed)
    {
        if (mixed is { YeastDied: { } at, Celsius: { } warm } && Temperature.FromCelsius(warm.Central) == at)
        {
            yield return StepFindings.About(step, "yeast-killed", Grade.Error, false, ("celsius", at), ("dies", Places.YeastDies));
        }
    }
}
