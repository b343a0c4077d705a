using System.Collections.Concurrent;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Pictures.Slips;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Pictures;

/// <summary>All pictures but the strip, of all demo runs.</summary>
internal static class AllPictures
{
    private static readonly ConcurrentDictionary<Voice, IReadOnlyList<(string Name, string Picture)>> Made = [];

    /// <summary>Drawn once for a voice.</summary>
    public static IReadOnlyList<(string Name, string Picture)> Of(Voice voice) => Made.GetOrAdd(voice, key => [.. Draw(key, 2)]);

    /// <param name="others">Kitchens beside the own one.</param>
    public static IEnumerable<(string Name, string Picture)> Draw(Voice voice, int others)
    {
        foreach (var (name, run) in DemoRuns.All)
        {
            foreach (var mix in run.Steps.Where(step => step.Kind == StepKind.Mix))
            {
                if (run.HeatOf(mix.Id) is { } heat)
                {
                    yield return ($"heat of {mix.Id}, {name}", HeatPicture.Draw(heat, run, voice, "h"));
                }
            }

            foreach (var rise in run.Course().Rises)
            {
                yield return ($"rise of {rise.Step}, {name}", RisePicture.Draw(rise, run.FindStep(rise.Step)!, Others(run, rise.Step, others), voice, "r"));
            }

            if (run.Formula.Makeup() is { } makeup)
            {
                yield return ($"makeup, {name}", BalancePicture.Draw(makeup, run.Formula, voice, "b"));
            }

            foreach (var (otherName, other) in DemoRuns.All.Where(other => other.Run.Recipe.Title == run.Recipe.Title && other.Run != run))
            {
                var span = new[] { run, other }.Select(each => each.Total?.Likely.Minutes ?? 0).Max() + 11;
                yield return ($"slips from {name} to {otherName}", SlipsPicture.Draw(run, other, name, otherName, voice, "s", Duration.FromMinutes(Math.Max(600, span))));
            }
        }
    }

    public static IReadOnlyList<OtherRise> Others(Rehearsal run, string step, int count) =>
    [
        .. DemoRuns.All
            .Where(other => other.Run.Recipe.Title == run.Recipe.Title && other.Run.Kitchen.Name != run.Kitchen.Name)
            .DistinctBy(other => other.Run.Kitchen.Name)
            .Select(other => (other.Run, Curve: other.Run.Course().Rises.FirstOrDefault(rise => rise.Step == step)))
            .Where(other => other.Curve is not null)
            .Take(count)
            .Select(other => new OtherRise(other.Run.Kitchen.Name, other.Curve!, other.Run.FindStep(step)!.Time)),
    ];
}
