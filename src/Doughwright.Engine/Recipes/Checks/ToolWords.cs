using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>The tools that a step's words and settings speak of.</summary>
internal static class ToolWords
{
    private static readonly Lazy<Entry[]> Entries = new(() =>
    [
        .. Tsv.Read(Tsv.Embedded("tool-words.tsv")).Rows.Select(row => new Entry(
            row["words"][0] == '@' ? row["words"] : Phrase.Normal(row["words"]),
            [.. row.List("tools", ',').Select(ToolName.Read)],
            row["needed"] == "yes")),
    ]);

    /// <summary>Every tool that some word or setting speaks of.</summary>
    public static IEnumerable<ToolName> Known => Entries.Value.SelectMany(entry => entry.Tools);

    /// <summary>
    /// What the step speaks of. The cue is left out: it names things that are there anyhow.
    /// </summary>
    public static IEnumerable<Entry> Of(Step step)
    {
        var prose = Phrase.Normal($"{step.Name} . {step.Words}");
        var settings = Settings(step).ToArray();
        return Entries.Value.Where(entry => entry.Words[0] == '@' ? settings.Contains(entry.Words) : Phrase.Holds(prose, entry.Words));
    }

    private static IEnumerable<string> Settings(Step step)
    {
        if (step.Kind == StepKind.Bake)
        {
            yield return "@bake";
        }

        if (step.Kind is StepKind.Proof or StepKind.Bake || step.Trays is not null)
        {
            yield return "@proof";
        }

        if (step.Way == MixingWay.Machine)
        {
            yield return "@machine";
        }

        if (step.Measured?.Temperature is not null || step.End is StepEnd.AtTemperature or StepEnd.AtCore)
        {
            yield return "@temperature";
        }

        if (step.Cover != Cover.Open)
        {
            yield return step.Cover == Cover.Cloth ? "@cloth" : "@covered";
        }

        if (step.End is StepEnd.AfterTime)
        {
            yield return "@timed";
        }

        yield return "@weigh";
    }

    /// <param name="Words">What to look for in the prose, in normal form, or a setting.</param>
    /// <param name="Tools">Any one of them will do.</param>
    /// <param name="Needed">Whether one of them has to be listed.</param>
    internal sealed record Entry(string Words, ToolName[] Tools, bool Needed);
}
