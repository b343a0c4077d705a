using Doughwright.Engine.Ingredients;


namespace Doughwright.Engine.Recipes.Live;

/// <summary>
/// The names that an author can write in brackets. One grammar: what it is of, then what of it. Where one name could be two things, the step
/// goes before the part, and what goes into the step's own part before what goes in elsewhere.
/// </summary>
public static class LiveNames
{
    public const string Pieces = "pieces";
    public const string PieceWeight = "piece weight";
    public const string TotalTime = "total time";
    public const string HandsTime = "hands time";
    public const string RoomTemperature = "room temperature";
    public const string BoilingPoint = "boiling point";
    public const string Oven = "oven";
    public const string FoldAfter = "fold after";
    public const string Time = "time";
    public const string Temperature = "temperature";
    public const string Weight = "weight";
    public const string In = "in";

    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth"];

    /// <summary>What a name stands for; null when it names nothing, or several things that are not the same.</summary>
    /// <param name="step">Id of the step in whose words it stands; null outside the steps.</param>
    public static LiveName? Find(Recipe recipe, string words, string? step = null)
    {
        var slug = Slug.Of(words);
        return slug.Length == 0 ? null : All(recipe, step).FirstOrDefault(name => Slug.Of(name.Words) == slug);
    }

    /// <summary>Every name there is in the words of a step, in the order in which they are looked for.</summary>
    public static IEnumerable<LiveName> All(Recipe recipe, string? step = null)
    {
        var own = step is null ? null : recipe.FindStep(step);
        return [.. OfAll(recipe), .. OfSteps(recipe, own), .. OfOwnLines(recipe, own), .. OfParts(recipe), .. OfLines(recipe)];
    }

    private static IEnumerable<LiveName> OfAll(Recipe recipe)
    {
        if (recipe.Make is not null)
        {
            yield return new(Pieces, LiveKind.Pieces);
            yield return new(PieceWeight, LiveKind.PieceWeight);
        }

        yield return new(TotalTime, LiveKind.TotalTime);
        yield return new(HandsTime, LiveKind.HandsTime);
        yield return new(RoomTemperature, LiveKind.RoomTemperature);
        yield return new(BoilingPoint, LiveKind.BoilingPoint);
    }

    private static IEnumerable<LiveName> OfSteps(Recipe recipe, Step? own)
    {
        // Without the name of a step they mean its own, else the first that has one.
        if ((own?.Oven is null ? recipe.Steps.FirstOrDefault(step => step.Oven is not null) : own) is { } baking)
        {
            yield return new(Oven, LiveKind.StepOven, baking.Id);
        }

        if ((own?.Folds.Count > 0 ? own : recipe.Steps.FirstOrDefault(step => step.Folds.Count > 0)) is { } folding)
        {
            foreach (var name in Folds("", folding))
            {
                yield return name;
            }
        }

        foreach (var (step, alias) in recipe.Steps.SelectMany(step => Aliases(step.Id, step.Name).Select(alias => (step, alias))))
        {
            yield return new($"{alias} {Time}", LiveKind.StepTime, step.Id);
            yield return new($"{alias} {Temperature}", LiveKind.StepTemperature, step.Id);
            if (step.Oven is not null)
            {
                yield return new($"{alias} {Oven}", LiveKind.StepOven, step.Id);
            }

            foreach (var name in Folds(alias + " ", step))
            {
                yield return name;
            }
        }
    }

    private static IEnumerable<LiveName> Folds(string before, Step step)
    {
        for (var i = 0; i < Math.Min(step.Folds.Count, Ordinals.Length); i++)
        {
            if (i == 0)
            {
                yield return new(before + FoldAfter, LiveKind.FoldAfter, step.Id);
            }

            yield return new($"{before}{Ordinals[i]} {FoldAfter}", LiveKind.FoldAfter, step.Id, Index: i);
        }
    }

    private static IEnumerable<LiveName> OfOwnLines(Recipe recipe, Step? own) =>
        own is null || recipe.FindComponent(own.Component) is not { } part ? [] : part.Lines.SelectMany(line => OfLine(part, line));

    private static IEnumerable<LiveName> OfParts(Recipe recipe)
    {
        foreach (var (part, alias) in recipe.Components.SelectMany(part => Aliases(part.Id, part.Name).Select(alias => (part, alias))))
        {
            yield return new($"{alias} {Temperature}", LiveKind.PartTemperature, Part: part.Id);
            yield return new($"{alias} {Weight}", LiveKind.PartWeight, Part: part.Id);
            yield return new(alias, LiveKind.PartWeight, Part: part.Id);
        }
    }

    private static IEnumerable<LiveName> OfLines(Recipe recipe)
    {
        var lines = recipe.Components.SelectMany(part => part.Lines.Select(line => (Part: part, Line: line))).ToArray();
        foreach (var (part, line) in lines)
        {
            foreach (var alias in Aliases(part.Id, part.Name))
            {
                yield return new($"{line.Name} {In} {alias}", LiveKind.LineWeight, Part: part.Id, Line: line.Id);
            }
        }

        // What goes into several parts has no one weight.
        foreach (var (part, line) in lines.GroupBy(at => at.Line.Id).Where(group => group.Count() == 1).Select(group => group.Single()))
        {
            foreach (var name in OfLine(part, line))
            {
                yield return name;
            }
        }
    }

    private static LiveName[] OfLine(Component part, Line line) =>
    [
        new(line.Name, LiveKind.LineWeight, Part: part.Id, Line: line.Id),
        new($"{line.Name} {Weight}", LiveKind.LineWeight, Part: part.Id, Line: line.Id),
    ];

    private static IEnumerable<string> Aliases(string id, string name) => new[] { id.Replace('-', ' '), name }.DistinctBy(Slug.Of);
}
