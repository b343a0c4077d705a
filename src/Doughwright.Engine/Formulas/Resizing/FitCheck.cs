using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>Looks whether the new size fits what the recipe is made in. What nobody has said is not guessed: it says what can be told.</summary>
internal static class FitCheck
{
    /// <summary>Litres of a kilogram of dough after mixing: 1.25 without gas, and 8 % of air. Source: dough-density.</summary>
    private const double LitresPerKilogram = 1 / (1.25 * 0.92);

    /// <summary>A bulk whose growth is not said is taken to double. Source: doubled-bulk.</summary>
    private const double UsualGrowth = 2;

    // Scaling by hand is not closer than this.
    private const double SamePiece = 0.02;

    private static bool Mixes(Step step) => step.Way is MixingWay.Machine or MixingWay.FoodProcessor;

    public static IEnumerable<Fit> Of(Formula before, Formula after, double factor, Kitchen kitchen, ResizeWish wish) =>
    [
        .. Bowls(before, after),
        .. Machines(before, after),
        .. Tins(before, after, wish),
        .. OvenRoom.Of(before.Recipe, wish),
        .. Trays(before.Recipe, after.Recipe, kitchen, wish),
    ];

    /// <summary>
    /// As many trays in use as the pieces fill now, fewer or more: the new text is then judged as the resizing judged it, and lies on its trays as the
    /// old one did when it is resized once more. More than a text can say are left.
    /// </summary>
    public static Recipe WithTrays(Recipe recipe, IReadOnlyList<Fit> fits)
    {
        if (fits.FirstOrDefault(fit => fit.Kind == FitKind.Tray)?.Needed is not { } needed
            || !Limits.Trays.Holds(needed)
            || recipe.Steps.SelectMany(step => step.Variants.Select(variant => variant.Step).Prepend(step)).All(step => step.Trays is null || step.Trays == needed))
        {
            return recipe;
        }

        return recipe with { Steps = [.. recipe.Steps.Select(step => WithTrays(step, needed))] };
    }

    private static Step WithTrays(Step step, int needed) => step with
    {
        Trays = step.Trays is null ? null : needed,
        Variants = [.. step.Variants.Select(variant => variant with { Step = WithTrays(variant.Step, needed) })],
    };

    /// <summary>Bowls, each once, at the step where it is fullest. How much water somebody boils a thing in is theirs.</summary>
    private static IEnumerable<Fit> Bowls(Formula before, Formula after)
    {
        var steps = before.Recipe.Steps.Where(step => step.Vessel is { Shape: VesselShape.Bowl or VesselShape.Pot } && step.Kind != StepKind.Cook && before.FindComponent(step.Component) is not null);
        foreach (var same in steps.GroupBy(step => (step.Component, step.Vessel! with { Warmed = false })))
        {
            var fullest = same.MaxBy(GrowthIn)!;
            var held = before.FindComponent(fullest.Component)!.Mass;
            var holds = after.FindComponent(fullest.Component)!.Mass;
            var needs = Volume.FromLitres(holds.Kilograms * LitresPerKilogram * GrowthIn(fullest));
            var has = fullest.Vessel!.Size?.Volume;
            var verdict = has is { } room ? (needs <= room ? FitVerdict.Fits : FitVerdict.TooMuch)
                : holds <= held ? FitVerdict.Fits
                : FitVerdict.CannotBeTold;
            yield return new(FitKind.Bowl, verdict, fullest.Id, fullest.Name) { HeldBefore = held, HoldsNow = holds, Needs = needs, Has = has };
        }
    }

    private static double GrowthIn(Step step) => step.End is StepEnd.AtGrowth growth ? growth.Times : step.Kind == StepKind.Bulk ? UsualGrowth : 1;

    /// <summary>How much flour a machine takes is in its manual, and nowhere in a recipe.</summary>
    private static IEnumerable<Fit> Machines(Formula before, Formula after) =>
        from step in before.Recipe.Steps
        where Mixes(step) && before.FindComponent(step.Component) is not null
        let held = before.FindComponent(step.Component)!.Flour
        let holds = after.FindComponent(step.Component)!.Flour
        select new Fit(FitKind.Machine, holds <= held ? FitVerdict.Fits : FitVerdict.CannotBeTold, step.Id, step.Name) { HeldBefore = held, HoldsNow = holds };

    /// <summary>One piece lies in one tin. Where several do, or each in its own, is nowhere said, so both must hold.</summary>
    private static IEnumerable<Fit> Tins(Formula before, Formula after, ResizeWish wish)
    {
        if (before.Recipe.Make is not { } was || after.Recipe.Make is not { } now || before.Recipe.Steps.FirstOrDefault(step => step.Vessel?.Shape == VesselShape.Tin) is not { } step)
        {
            yield break;
        }

        var isOne = was.Pieces == 1;
        var each = wish is ResizeWish.Tin || now.PieceMass <= was.PieceMass * (1 + SamePiece);
        var all = wish is ResizeWish.Tin || after.Dough <= before.Dough * (1 + SamePiece);
        var verdict = each && (isOne || all) ? FitVerdict.Fits : isOne || (!each && !all) ? FitVerdict.TooMuch : FitVerdict.CannotBeTold;
        yield return new(FitKind.Tin, verdict, step.Id, step.Name)
        {
            HeldBefore = isOne ? was.PieceMass : before.Dough,
            HoldsNow = isOne ? now.PieceMass : after.Dough,
            Needed = isOne ? now.Pieces : null,
            Has = wish is ResizeWish.Tin tin ? tin.Size.Volume : step.Vessel!.Size?.Volume,
        };
    }

    /// <summary>As many on a tray as the author had there; of heavier pieces fewer, by the floor they cover.</summary>
    private static IEnumerable<Fit> Trays(Recipe before, Recipe after, Kitchen kitchen, ResizeWish wish)
    {
        if (before.Make is not { } was || after.Make is not { } now || OtherVessel.StepWithTrays(before) is not { Trays: { } trays } step)
        {
            yield break;
        }

        var perTray = Loads(was.Pieces, trays);
        if (was.PieceMass > Mass.Zero && now.PieceMass > Mass.Zero && Math.Abs((now.PieceMass / was.PieceMass) - 1) > SamePiece)
        {
            perTray = (int)Math.Clamp(Math.Floor((perTray * FloorShare(was.PieceMass / now.PieceMass)) + 1e-9), 1, int.MaxValue);
        }

        var needed = Loads(now.Pieces, perTray);
        yield return new(FitKind.Tray, needed <= kitchen.Trays ? FitVerdict.Fits : FitVerdict.TooMuch, step.Id, step.Name)
        {
            PerTray = perTray,
            Needed = needed,
            There = kitchen.Trays,
        };
        // What may go into no oven is not counted in loads.
        if (OvenRoom.IsBeyond(wish))
        {
            yield break;
        }

        var loads = Loads(needed, Math.Max(1, kitchen.Trays));
        yield return new(FitKind.Oven, loads <= 1 ? FitVerdict.Fits : FitVerdict.TooMuch, step.Id, step.Name) { Needed = needed, There = kitchen.Trays, Loads = loads };
    }

    private static int Loads(int all, int atOnce) => (int)(((long)all + atOnce - 1) / atOnce);

    /// <summary>Pieces of one shape cover floor as the power 2/3 of their weight.</summary>
    private static double FloorShare(double lighter) => Elementary.Exp(2.0 / 3 * Elementary.Log(lighter));
}
