using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Readying;

/// <summary>"When do I weigh what, to be ready at seven?": yeast, water, or both for a time that is given.</summary>
public static class Ready
{
    /// <summary>A dose between a sixteenth and four times the author's: beyond, it is another recipe. A choice. Source: ready-doses.</summary>
    private const double LeastDose = 1.0 / 16;
    private const double MostDose = 4;

    /// <summary>More fresh yeast on flour than any class of dough has. Source: ready-doses.</summary>
    private const double MostFreshPercent = 8;

    /// <summary>Water just above freezing, up to what yeast bears (<see cref="HeatAnswer.YeastBears"/>).</summary>
    private const double ColdestWater = 1;

    private static readonly Duration Moved = Duration.FromMinutes(1);

    /// <summary>
    /// Three ways to take a wanted time from the first hand to the end of the last step, in the kitchen asked for. What ripens, bakes, cools or lies in
    /// the fridge for a fixed time stays as it is there.
    /// </summary>
    /// <param name="request">Without a dough temperature to solve for: the water is moved here.</param>
    /// <param name="wanted">Above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wanted time is not above zero, or a dough temperature is asked for as well.</exception>
    public static ReadyAnswer Answer(Recipe recipe, Larder larder, Request request, Duration wanted, int lanes = Rehearser.OrdinaryLanes)
    {
        Require.Within(wanted.Minutes, 1e-3, double.MaxValue, "Time until it is to be ready, min");
        if (request.Dough is not null)
        {
            throw new ArgumentOutOfRangeException(nameof(request), request.Dough, "A dough temperature cannot be asked for as well.");
        }

        var home = HomeRun.Of(Formula.Balance(recipe, larder), lanes, request.SectionMinutes);
        var written = Rehearser.Rehearse(home, larder, request);
        if (HeatAnswer.MixOfDough(written.Kept.Stage) is not { } mix || written.Formula.FindComponent(mix.Component) is not { } dough)
        {
            return new(wanted, written, [.. Enum.GetValues<ReadyLever>().Select(lever => Not(lever, ReadyObstacle.NotKnown))]);
        }

        var warmed = Warmed(dough, written);
        var search = new ReadySearch(home, larder, request, dough, warmed);
        var asking = new Asking(wanted, written, search, mix, dough, warmed);
        var (byYeast, lnDose) = asking.ByYeast();
        return new(wanted, written, [byYeast, asking.ByWater(), asking.ByBoth(lnDose)]);
    }

    /// <summary>The liquid that weighs most is the one a baker warms or cools; else the parts that are made warm. What ripens has the warmth of its waiting.</summary>
    private static IReadOnlyList<LineFormula> Warmed(ComponentFormula dough, Rehearsal written)
    {
        var held = dough.Lines.Where(line => line.Mass > Mass.Zero).ToList();
        return held.Where(line => line is { Role: Role.Water or Role.Liquid, UsesComponent: null }).MaxBy(line => line.Mass.Grams) is { } poured ? [poured]
            : [.. held.Where(line => line.UsesComponent is { } used && written.Recipe.FindComponent(used) is { Kind: ComponentKind.Scald or ComponentKind.Puree })];
    }

    private static ReadyWay Not(ReadyLever lever, ReadyObstacle why) => new() { Lever = lever, Obstacle = why };

    /// <summary>One question with all it is asked of.</summary>
    private sealed class Asking(Duration wanted, Rehearsal written, ReadySearch search, Step mix, ComponentFormula dough, IReadOnlyList<LineFormula> warmed)
    {
        private readonly double least = Elementary.Log(LeastDose);

        private double Most => Elementary.Log(Math.Max(1, Math.Min(MostDose, FreshPercent > 0 ? MostFreshPercent / FreshPercent : MostDose)));

        private double FreshPercent => dough.Flour > Mass.Zero
            ? 100 * search.Yeasts.Sum(line => YeastEquivalents.ToFresh(line.Mass, line.Ingredient!.Yeast!.Value).Grams) / dough.Flour.Grams
            : 0;

        /// <returns>The way, and the dose that does it or comes nearest.</returns>
        public (ReadyWay Way, double LnDose) ByYeast()
        {
            if (search.Yeasts.Count == 0)
            {
                return (Not(ReadyLever.Yeast, ReadyObstacle.NoYeastInDough), 0);
            }

            double At(double lnDose) => search.Minutes(lnDose, null);
            var place = ReadySearch.Find(At, least, Most, wanted.Minutes);
            return place.At is { } found
                ? (Way(ReadyLever.Yeast, found, null), found)
                : (OutOfReach(ReadyLever.Yeast, place), place.Quick > wanted.Minutes ? Most : least);
        }

        public ReadyWay ByWater() => WithWater(ReadyLever.Water, 0);

        /// <summary>Half of the way that yeast alone would go, and water for the rest.</summary>
        public ReadyWay ByBoth(double lnDose) => search.Yeasts.Count == 0
            ? Not(ReadyLever.Both, ReadyObstacle.NoYeastInDough)
            : WithWater(ReadyLever.Both, lnDose / 2);

        private ReadyWay WithWater(ReadyLever lever, double lnDose)
        {
            if (warmed.Count == 0)
            {
                return Not(lever, ReadyObstacle.NoWaterInDough);
            }

            double At(double celsius) => search.Minutes(lnDose, celsius);
            // What is made warm cools in the room, and gets no colder than it.
            var coldest = warmed.All(line => line.UsesComponent is null) ? ColdestWater : written.Kitchen.Shelf.Celsius;
            var place = ReadySearch.Find(At, Math.Min(coldest, HeatAnswer.YeastBears.Celsius - 1), HeatAnswer.YeastBears.Celsius, wanted.Minutes);
            return place.At is { } found ? Way(lever, lnDose, found) : OutOfReach(lever, place);
        }

        private static ReadyWay OutOfReach(ReadyLever lever, ReadyPlace place) => double.IsInfinity(place.Quick)
            ? Not(lever, ReadyObstacle.NotKnown)
            : Not(lever, place.IsJump ? ReadyObstacle.JumpsPast : ReadyObstacle.OutOfReach) with
            {
                Soonest = Duration.FromMinutes(place.Quick),
                Latest = double.IsFinite(place.Slow) ? Duration.FromMinutes(place.Slow) : null,
            };

        private ReadyWay Way(ReadyLever lever, double lnDose, double? water)
        {
            var run = search.Run(lnDose, water);
            var known = written.Findings.Select(finding => finding.Id).ToHashSet();
            var doses = lever == ReadyLever.Water ? [] : Doses(Elementary.Exp(lnDose));
            return new()
            {
                Lever = lever,
                Doses = doses,
                Water = water is { } celsius ? WaterAt(celsius, run) : null,
                Rehearsal = run,
                AsWeighed = AsWeighed(doses, water),
                Moves = [.. run.Steps.Select(Move).OfType<ReadyMove>()],
                Findings = [.. run.Findings.Where(finding => !known.Contains(finding.Id))],
            };
        }

        private List<ReadyDose> Doses(double factor) => [.. search.Yeasts.Select(line =>
        {
            var (now, scale) = (line.Mass * factor, written.Kitchen.Scale);
            var shown = scale > Mass.Zero ? scale * Math.Round(now / scale, MidpointRounding.AwayFromZero) : now;
            return new ReadyDose(dough.Id, line.Id, line.Name, line.Mass, now, shown);
        })];

        /// <summary>All lines rounded, as one dose: the likely time with it.</summary>
        private Duration? AsWeighed(IReadOnlyList<ReadyDose> doses, double? water)
        {
            var factor = doses.Count == 0 ? 0 : doses.Sum(dose => dose.Weighed.Grams) / doses.Sum(dose => dose.Was.Grams);
            return factor > 0 && search.Minutes(Elementary.Log(factor), water) is var minutes && double.IsFinite(minutes) ? Duration.FromMinutes(minutes) : null;
        }

        private ReadyWater WaterAt(double celsius, Rehearsal run)
        {
            var bowl = written.Kept.BowlOf(mix);
            var parts = bowl is { IsKnown: true } ? bowl.Parts(0) : null;
            Temperature? Was(LineFormula line) => parts is not null && bowl!.IndicesOf([line.Id]) is [var index] ? Temperature.FromCelsius(parts[index]) : null;
            return new(
                dough.Id,
                [.. warmed.Select(line => new ReadyWarmed(line.Id, line.Name, Was(line)))],
                Temperature.FromCelsius(celsius),
                run.Components.FirstOrDefault(component => component.Id == dough.Id)?.Mixed);
        }

        private ReadyMove? Move(RehearsedStep step) =>
            step.Time is { } now && written.FindStep(step.Id)?.Time is { } was && (now.Likely - was.Likely >= Moved || was.Likely - now.Likely >= Moved)
                ? new(step.Id, step.Name, step.Kind, was.Likely, now.Likely)
                : null;
    }
}
