using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The keys that a step and its variants have in common.</summary>
internal static class StepKeys
{
    public const string Name = "name";
    public const string Hands = "hands";
    public const string Way = "way";
    public const string Where = "where";
    public const string Oven = "oven";
    public const string Trays = "trays";
    public const string On = "on";
    public const string Steam = "steam";
    public const string Lid = "lid";
    public const string Vessel = "vessel";
    public const string Depth = "depth";
    public const string Cover = "cover";
    public const string Fold = "fold";
    public const string Folds = "folds";
    public const string Ends = "ends";
    public const string Measured = "measured";
    public const string Cue = "cue";
    public const string Tools = "tools";
    public const string Words = "words";

    /// <summary>Takes back folds or tools that the step has: "fold: none".</summary>
    public const string None = "none";

    public static IReadOnlyList<string> All { get; } =
        [Name, Hands, Way, Where, Oven, Trays, On, Steam, Lid, Vessel, Depth, Cover, Fold, Folds, Ends, Measured, Cue, Tools, Words];

    /// <summary>
    /// The step with what a section says again. What was measured is never carried over: seen in one way is not seen in another.
    /// </summary>
    /// <param name="vessels">Of the kitchen that it was tested in.</param>
    public static Step Over(Step step, Section section, StepKind? kind, KitchenVessels vessels) => step with
    {
        Name = section.Words(Name)?.Text ?? step.Name,
        Hands = section.Words(Hands)?.Duration(Limits.Hands) ?? step.Hands,
        Way = section.Words(Way) is { } way ? StepGrammar.Way(way) : step.Way,
        Where = section.Words(Where)?.Word<Where>() ?? step.Where,
        Oven = section.Words(Oven) is { } oven ? StepGrammar.Oven(oven) : step.Oven,
        Trays = section.Words(Trays)?.Count(Limits.Trays) ?? step.Trays,
        On = section.Words(On)?.Word<BakedOn>() ?? step.On,
        Steam = section.Words(Steam) is { } steam ? OvenGrammar.Steam(steam) : step.Steam,
        LidOff = section.Words(Lid) is { } lid ? OvenGrammar.Lid(lid) : step.LidOff,
        Vessel = section.Words(Vessel) is { } vessel ? StepGrammar.Vessel(vessel, vessels) : step.Vessel,
        Depth = section.Words(Depth)?.Length(Limits.Depth) ?? step.Depth,
        Cover = section.Words(Cover)?.Word<Cover>() ?? step.Cover,
        Folds = section.Has(Fold) || section.Has(Folds) ? FoldsOf(section) : step.Folds,
        End = section.Words(Ends) is { } end ? EndGrammar.Read(end) : step.End,
        Measured = section.Words(Measured) is { } measured ? MeasuredGrammar.Read(measured, MeasuredLimit(kind)) : null,
        Cue = section.Prose(Cue) ?? step.Cue,
        Tools = section.Items(Tools) is { } tools ? ToolsOf(tools) : step.Tools,
        Words = section.Prose(Words) ?? step.Words,
    };

    private static IReadOnlyList<Fold> FoldsOf(Section section) =>
        [.. section.Lines(Fold).Concat(section.Lines(Folds)).Where(words => words.Text != None).Select(StepGrammar.Fold).OfType<Fold>()];

    private static IReadOnlyList<string> ToolsOf(IReadOnlyList<Phrase> tools) =>
        tools is [{ Text: None }] ? [] : [.. tools.Select(tool => tool.Text)];

    /// <summary>A mix is measured in the dough, a bake in its core.</summary>
    private static Limit<Temperature> MeasuredLimit(StepKind? kind) => kind switch
    {
        StepKind.Mix => Limits.Mixed,
        StepKind.Bake => Limits.Core,
        _ => Limits.Matter,
    };
}
