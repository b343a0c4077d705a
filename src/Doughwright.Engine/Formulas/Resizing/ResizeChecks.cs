using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>What there is to say about a resized recipe before anything is rehearsed.</summary>
internal static class ResizeChecks
{
    /// <summary>One part stirred into nine parts of water: ten times the mass to weigh.</summary>
    private const double Dilution = 10;

    // No kitchen; the arithmetic of units of a scale ends a little above.
    private const double MostGrams = 1e9;

    /// <summary>No dough that can be made, or more of a part than can be written, so that no recipe is made of it.</summary>
    public static Finding? Beyond(Formula before, double factor)
    {
        var heaviest = before.Components.SelectMany(component => component.Lines).Select(line => line.Mass.Grams).DefaultIfEmpty(0).Max();
        var isDough = before.Dough <= Mass.Zero || Limits.Dough.Holds(before.Dough * factor);
        return factor > 0 && double.IsFinite(factor) && heaviest * factor <= MostGrams && isDough
            ? null
            : Outside(Mass.FromGrams(double.IsFinite(factor) ? Math.Min(before.Dough.Grams * factor, double.MaxValue) : 0));
    }

    public static IEnumerable<Finding> Of(Resized resized) =>
    [
        .. DoughLimits(resized.After!),
        .. PieceLimits(resized),
        .. BelowScale(resized),
        .. RoundingChecks.Of(resized),
        .. Household(resized),
        .. resized.Choices.Select(choice => Choice(choice, resized)),
        .. resized.Fits.SelectMany(fit => Fits(fit, resized)),
        .. Hands(resized),
        .. Depth(resized),
        .. OneOrMany(resized),
        .. NewInFormula(resized),
    ];

    private static Finding Outside(Mass dough) => Report.Make(
        "dough-outside-limits",
        Grade.Error,
        "parts",
        Position.None,
        ("value", dough),
        ("low", Limits.Dough.Low),
        ("high", Limits.Dough.High),
        ("typed", ""));

    private static IEnumerable<Finding> DoughLimits(Formula after)
    {
        if (after.Dough > Mass.Zero && !Limits.Dough.Holds(after.Dough))
        {
            yield return Outside(after.Dough);
        }
        else if (after.Dough >= Limits.LargeDough)
        {
            yield return Report.Make("large-dough", Grade.Hint, "parts", Position.None, ("value", after.Dough));
        }
    }

    private static IEnumerable<Finding> PieceLimits(Resized resized)
    {
        if (resized.Recipe!.Make is { } make && !Limits.Piece.Holds(make.PieceMass))
        {
            (string, object)[] arguments = [("value", make.PieceMass), ("low", Limits.Piece.Low), ("high", Limits.Piece.High), ("typed", "")];
            yield return Report.Make(Limits.Piece.Kind, Grade.Error, "make", Position.None, arguments);
        }

        if (resized.Recipe!.Make is { Pieces: var pieces } && !Limits.Pieces.Holds(pieces))
        {
            (string, object)[] arguments = [("value", pieces), ("low", Limits.Pieces.Low), ("high", Limits.Pieces.High), ("typed", "")];
            yield return Report.Make(Limits.Pieces.Kind, Grade.Error, "make", Position.None, arguments);
        }
    }

    private static IEnumerable<Finding> BelowScale(Resized resized) =>
        from line in resized.Lines
        where line.Form == LineForm.BelowScale
        select Report.Make(
            "dose-below-scale",
            Grade.Warning,
            Report.PlaceOf(line.Component, line.Line),
            PositionOf(resized, line.Component, line.Line),
            ("name", line.Name),
            ("mass", line.After),
            ("scale", resized.ScaleShown),
            ("dilution", line.After * Dilution));

    /// <summary>All in one. What comes in pieces is told with its choices.</summary>
    private static IEnumerable<Finding> Household(Resized resized)
    {
        var lines = resized.Lines
            .Where(line => line.Form == LineForm.HouseholdToGrams && !resized.Choices.Any(choice => choice.Component == line.Component && choice.Line == line.Line))
            .ToArray();
        if (lines.Length > 0)
        {
            yield return Report.Make(
                "resize-measure-to-grams",
                Grade.Hint,
                Report.PlaceOf(lines[0].Component, lines[0].Line),
                PositionOf(resized, lines[0].Component, lines[0].Line),
                ("lines", lines.Select(line => $"{line.Name} {line.Typed.Replace(' ', '\u00a0')}").ToArray()),
                ("typed", lines.Select(line => resized.Before.Recipe.FindComponent(line.Component)!.Lines.First(source => source.Id == line.Line).Typed.Replace(' ', '\u00a0')).ToArray()));
        }
    }

    private static Finding Choice(WholeChoice choice, Resized resized)
    {
        var component = resized.Before.FindComponent(choice.Component)!;
        var written = component.Lines.First(line => line.Id == choice.Line);
        var isEgg = written.Ingredient?.Allergens.Contains("egg") ?? false;
        (string, object)[] arguments =
        [
            ("name", choice.Name),
            ("part", component.Name),
            ("needed", choice.Needed),
            ("piece", choice.Piece),
            ("mass", choice.Piece * choice.Needed),
            ("typed", written.Source.Household is null ? "" : written.Source.Typed.Replace(' ', '\u00a0')),
        ];
        var (place, position) = (Report.PlaceOf(choice.Component, choice.Line), PositionOf(resized, choice.Component, choice.Line));
        return isEgg ? Report.Make("resize-egg-not-whole", Grade.Hint, place, position, arguments) : Report.Make("resize-not-whole", Grade.Hint, place, position, arguments);
    }

    private static IEnumerable<Finding> Fits(Fit fit, Resized resized)
    {
        var place = $"steps.{fit.Step}";
        var position = resized.Before.Recipe.FindStep(fit.Step)?.Position ?? Position.None;
        switch (fit)
        {
            case { Kind: FitKind.Bowl, Verdict: FitVerdict.TooMuch }:
                yield return Report.Make("resize-bowl-small", Grade.Warning, place, position, ("step", fit.Name), ("needs", fit.Needs!), ("has", fit.Has!));
                break;
            case { Kind: FitKind.Bowl, Verdict: FitVerdict.CannotBeTold }:
                yield return Report.Make("resize-bowl-not-told", Grade.Hint, place, position, ("step", fit.Name), ("held", fit.HeldBefore!), ("holds", fit.HoldsNow!), ("needs", fit.Needs!));
                break;
            case { Kind: FitKind.Machine, Verdict: FitVerdict.CannotBeTold }:
                yield return Report.Make("resize-machine-not-told", Grade.Hint, place, position, ("step", fit.Name), ("held", fit.HeldBefore!), ("holds", fit.HoldsNow!));
                break;
            case { Kind: FitKind.Tin, Verdict: FitVerdict.TooMuch }:
                yield return Report.Make("resize-tin-fuller", Grade.Warning, place, position, ("step", fit.Name), ("held", fit.HeldBefore!), ("holds", fit.HoldsNow!));
                break;
            case { Kind: FitKind.Tin, Verdict: FitVerdict.CannotBeTold }:
                yield return Report.Make("resize-tin-not-told", Grade.Hint, place, position, ("step", fit.Name), ("held", fit.HeldBefore!), ("holds", fit.HoldsNow!));
                break;
            case { Kind: FitKind.Oven, Verdict: FitVerdict.CannotBeTold }:
                yield return Report.Make("resize-oven-not-told", Grade.Warning, place, position, ("step", fit.Name), ("longest", OvenRoom.Longest), ("widest", OvenRoom.Widest));
                break;
            case { Kind: FitKind.Oven, Verdict: FitVerdict.TooMuch }:
                yield return Report.Make("resize-oven-loads", Grade.Warning, place, position, ("step", fit.Name), ("needed", fit.Needed!), ("there", fit.There!), ("loads", fit.Loads!));
                break;
        }
    }

    /// <summary>Peeling and shaping take longer for more; the minutes written are those of the old size.</summary>
    private static IEnumerable<Finding> Hands(Resized resized) =>
        from step in resized.Recipe!.Steps
        where step.Kind is StepKind.Shape or StepKind.Prepare && step.Hands > Duration.Zero
        let share = step.Kind == StepKind.Shape && resized.Before.Recipe.Make is { } was && resized.Recipe.Make is { } now
            ? (double)now.Pieces / was.Pieces
            : resized.Factor!.Value
        where Math.Abs(share - 1) > 0.1
        select Report.Make(
            "resize-hands",
            Grade.Hint,
            $"steps.{step.Id}",
            step.Position,
            ("step", step.Name),
            ("hands", step.Hands),
            ("now", step.Hands * share));

    /// <summary>Spread as deep as before, more of it covers more.</summary>
    private static IEnumerable<Finding> Depth(Resized resized) =>
        from step in resized.Recipe!.Steps
        where step.Depth is not null && resized.Factor > 1.1
        select Report.Make("resize-depth", Grade.Hint, $"steps.{step.Id}", step.Position, ("step", step.Name), ("depth", step.Depth!), ("times", resized.Factor!));

    /// <summary>The author's word for one piece does not fit several, nor the other way round.</summary>
    private static IEnumerable<Finding> OneOrMany(Resized resized)
    {
        if (resized.Before.Recipe.Make is { } was && resized.Recipe!.Make is { } now && (was.Pieces == 1) != (now.Pieces == 1) && was.What == now.What)
        {
            yield return Report.Make("resize-one-or-many", Grade.Hint, "make", Position.None, ("pieces", now.Pieces), ("what", now.What));
        }
    }

    /// <summary>What the new formula shows and the old one did not. Whole pieces are told with their choices.</summary>
    private static IEnumerable<Finding> NewInFormula(Resized resized)
    {
        var known = resized.Before.Findings.Select(finding => finding.Id).ToHashSet();
        return resized.After!.Findings.Where(finding => !known.Contains(finding.Id) && finding.Kind != "egg-not-whole");
    }

    private static Position PositionOf(Resized resized, string component, string line) =>
        resized.Before.Recipe.FindComponent(component)?.Lines.FirstOrDefault(source => source.Id == line)?.Position ?? Position.None;
}
