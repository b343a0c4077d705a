using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.Corpus;

/// <summary>How often the findings are wrong about sound recipes, and how often they see a planted fault. The texts were written before the rules were tuned.</summary>
public class CorpusTests(ITestOutputHelper output)
{
    /// <summary>One false warning per five recipes.</summary>
    private const int MostFalseWarnings = 6;

    private const int FewestFaultsFound = 55;

    private const int MostLaterFaultsMissed = 1;

    [Fact]
    public void TheCorpus_HasThirtyRecipesAndSixtyFaults() => Assert.Equal((30, 60), (SoundAndFaulty.Sound.Count, SoundAndFaulty.Faults.Count));

    [Fact]
    public void SoundRecipes_GiveAtMostOneFalseWarningInFive()
    {
        var told = SoundAndFaulty.Sound
            .SelectMany(recipe => SoundAndFaulty.FindingsIn(recipe.Value).Select(finding => (recipe.Key, Finding: finding)))
            .ToArray();
        var warnings = told.Where(one => one.Finding.Grade > Grade.Hint).Select(one => $"{one.Key}: {one.Finding.Grade} {one.Finding.Id}").ToArray();
        output.WriteLine($"{warnings.Length} false warnings, {told.Length - warnings.Length} hints.");
        output.WriteLine(string.Join('\n', warnings));
        output.WriteLine("Hints: " + string.Join(", ", told.Where(one => one.Finding.Grade == Grade.Hint).CountBy(one => one.Finding.Kind)
            .OrderByDescending(count => count.Value).Select(count => $"{count.Key} {count.Value}")) + ".");
        Assert.True(warnings.Length <= MostFalseWarnings, string.Join('\n', warnings));
    }

    [Fact]
    public void PlantedFaults_AreFoundAtTheirPlace() => AreFound(SoundAndFaulty.Faults, FewestFaultsFound);

    /// <summary>Beyond the sixty: keys that came later have their own faults and their own bound.</summary>
    [Fact]
    public void FaultsOfLaterKeys_AreFoundAtTheirPlace() => AreFound(SoundAndFaulty.LaterFaults, SoundAndFaulty.LaterFaults.Count - MostLaterFaultsMissed);

    private void AreFound(IReadOnlyList<PlantedFault> faults, int fewest)
    {
        var sound = SoundAndFaulty.Sound.ToDictionary(
            recipe => recipe.Key, recipe => SoundAndFaulty.FindingsIn(recipe.Value).Select(finding => finding.Id).ToHashSet());
        var missed = faults
            .Where(fault => !SoundAndFaulty.FindingsIn(fault.Text).Any(finding => fault.IsToldBy(finding) && !sound[fault.File].Contains(finding.Id)))
            .Select(fault => $"{fault.Id}: none of {string.Join(", ", fault.Kinds)} at {string.Join(", ", fault.Places)}")
            .ToArray();
        output.WriteLine($"{faults.Count - missed.Length} of {faults.Count} found.");
        output.WriteLine(string.Join('\n', missed));
        Assert.True(faults.Count - missed.Length >= fewest, string.Join('\n', missed));
    }
}
