using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Corpus;

/// <summary>The sound recipes and the faults planted into them, and everything the engine finds in a text.</summary>
internal static class SoundAndFaulty
{
    private const string Folder = "tests/data/corpus";

    private static readonly Lazy<IReadOnlyDictionary<string, string>> TheSound = new(() =>
        Directory.EnumerateFiles(Path.Combine(Texts.Root, Folder, "sound"), "*.yaml")
            .Order(StringComparer.Ordinal)
            .ToDictionary(path => Path.GetFileNameWithoutExtension(path), File.ReadAllText));

    private static readonly Lazy<IReadOnlyList<PlantedFault>> TheFaults = new(() => PlantedFault.ReadAll(Texts.Read($"{Folder}/faults.txt"), TheSound.Value));

    private static readonly Lazy<IReadOnlyList<PlantedFault>> TheLaterFaults = new(() => PlantedFault.ReadAll(Texts.Read($"{Folder}/faults-of-later-keys.txt"), TheSound.Value));

    public static IReadOnlyDictionary<string, string> Sound => TheSound.Value;

    public static IReadOnlyList<PlantedFault> Faults => TheFaults.Value;

    public static IReadOnlyList<PlantedFault> LaterFaults => TheLaterFaults.Value;

    /// <summary>As the command "findings" does it: from the text to the rehearsal at home, what is accepted apart.</summary>
    public static Judgement Judge(string text)
    {
        var reading = RecipeText.Read(text);
        if (!reading.Understood || reading.Recipe is not { } recipe)
        {
            return new(reading.Findings, []);
        }

        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped);
        return Acceptances.Judge(
            [.. reading.Findings.Concat(RecipeChecks.Of(recipe)).Concat(rehearsal.Formula.Findings).Concat(rehearsal.Findings)
                .DistinctBy(finding => (finding.Kind, finding.Place, finding.Position))],
            recipe);
    }

    public static IReadOnlyList<Finding> FindingsIn(string text) => Judge(text).Open;

    public static Recipe? RecipeOf(string text) => RecipeText.Read(text) is { Understood: true, Recipe: { } recipe } ? recipe : null;
}
