using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.Corpus;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Remedies;

/// <summary>A way out that was carried out leaves its finding gone and no error that was not there before.</summary>
public class RemedyLawTests(ITestOutputHelper output)
{
    private const int FewestKinds = 20;

    [Fact]
    public void CarriedOut_TheFindingIsGone_AndNoErrorIsNew()
    {
        var tried = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var broken = new List<string>();
        foreach (var (name, text) in Faulty().DistinctBy(one => one.Text))
        {
            var before = SoundAndFaulty.FindingsIn(text);
            var errors = before.Where(IsError).Select(finding => finding.Id).ToHashSet();
            foreach (var (finding, remedy) in before.SelectMany(finding => Engine.Remedies.Remedies.For(finding, SoundAndFaulty.RecipeOf(text)).Select(remedy => (finding, remedy))))
            {
                tried[finding.Kind] = tried.GetValueOrDefault(finding.Kind) + 1;
                var changed = remedy.CarryOut(text);
                var after = SoundAndFaulty.FindingsIn(changed);
                if (after.Count(other => other.Id == finding.Id) >= before.Count(other => other.Id == finding.Id))
                {
                    broken.Add($"{name}: {remedy.Id} leaves its finding");
                }

                broken.AddRange(after.Where(other => IsError(other) && !errors.Contains(other.Id) && RecipeOrWorse(before, other)).Select(other => $"{name}: {remedy.Id} brings {other.Id}"));
            }
        }

        output.WriteLine($"{tried.Count} kinds, {tried.Values.Sum()} remedies carried out: {string.Join(", ", tried)}");
        Assert.True(broken.Count == 0, string.Join('\n', broken));
        Assert.True(tried.Count >= FewestKinds, string.Join(", ", tried.Keys));
    }

    [Fact]
    public void EveryText_OfTheSlips_IsOfferedAWayOut() => Assert.All(TextSlips.All, slip =>
        Assert.NotEmpty(RecipeText.Read(slip.Text).Findings.Where(finding => finding.Kind == slip.Kind).SelectMany(finding => Engine.Remedies.Remedies.For(finding, SoundAndFaulty.RecipeOf(slip.Text)))));

    [Fact]
    public void Ids_AreUniqueWithinAText() => Assert.All(Faulty(), one =>
    {
        var recipe = SoundAndFaulty.RecipeOf(one.Text);
        var ids = SoundAndFaulty.FindingsIn(one.Text).DistinctBy(finding => finding.Id).SelectMany(finding => Engine.Remedies.Remedies.For(finding, recipe)).Select(remedy => remedy.Id).ToArray();
        Assert.Equal(ids.Length, ids.Distinct().Count());
    });

    private static IEnumerable<(string Name, string Text)> Faulty() =>
        SoundAndFaulty.Sound.Select(recipe => (recipe.Key, recipe.Value))
            .Concat(SoundAndFaulty.Faults.Select(fault => (fault.Id, fault.Text)))
            .Concat(TextSlips.All.Select(slip => (slip.Kind, slip.Text)));

    private static bool IsError(Finding finding) => finding.Grade == Grade.Error;

    /// <summary>
    /// Where a line was not understood nothing behind it was worked out: an error of the whole recipe that shows once it is read was there all along.
    /// </summary>
    private static bool RecipeOrWorse(IReadOnlyList<Finding> before, Finding found) => found.NotUnderstood || !before.Any(finding => finding.NotUnderstood);
}
