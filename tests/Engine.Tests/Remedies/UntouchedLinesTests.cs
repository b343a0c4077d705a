using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.Corpus;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Remedies;

/// <summary>A change of the recipe changes the lines it must, and leaves every other line byte for byte.</summary>
public class UntouchedLinesTests(ITestOutputHelper output)
{
    /// <summary>A text as people write: keys in another order, gaps, remarks at a distance, quotes, defaults said, units of their own.</summary>
    private static readonly string Own = Texts.PotatoRolls
        .Replace("    sugar: 30 g\n", "\n\n    # sweet, but not much\n    sugar:   1.058 oz    # typed so\n", StringComparison.Ordinal)
        .Replace("    butter: 50 g, soft\n", "    'butter': \"50 g, soft\"  # quoted\n", StringComparison.Ordinal)
        .Replace("    of: wash\n", "    # the brush\n    of: wash  # milk\n\n", StringComparison.Ordinal)
        .Replace("tools:\n", "# what is on the bench\ntools:   # a list\n", StringComparison.Ordinal);

    [Fact]
    public void NothingChanged_GivesTheTextBack() => Assert.All(
        [Own, Own.ReplaceLineEndings("\r\n"), '\ufeff' + Own, Own.TrimEnd('\n'), .. SoundAndFaulty.Sound.Values],
        text => Assert.Equal(text, RecipeText.Change(text, recipe => recipe).Text));

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void OneWeight_ChangesOneLine(string lineEnd)
    {
        var text = Own.ReplaceLineEndings(lineEnd);
        Assert.Equal(
            text.Replace("sugar:   1.058 oz    # typed so", "sugar:   45 g    # typed so", StringComparison.Ordinal),
            RecipeText.Change(text, recipe => With(recipe, "dough", "sugar", line => line with { Mass = Engine.Quantities.Mass.FromGrams(45) })).Text);
    }

    [Fact]
    public void OneQuotedValue_IsExchangedWithItsQuotes()
    {
        var changed = RecipeText.Change(Own, recipe => With(recipe, "dough", "butter", line => line with { Mass = Engine.Quantities.Mass.FromGrams(60) })).Text;
        Assert.Equal(Own.Replace("\"50 g, soft\"", "60 g, soft", StringComparison.Ordinal), changed);
    }

    [Fact]
    public void ALineTakenOut_LeavesTheWordsAboveIt()
    {
        var changed = RecipeText.Change(Own, recipe => recipe with
        {
            Components = [.. recipe.Components.Select(part => part with { Lines = [.. part.Lines.Where(line => line.Id != "sugar")] })],
            Steps = [.. recipe.Steps.Select(step => step with { Order = [.. step.Order.Where(id => id != "sugar")] })],
        }).Text;
        Assert.Contains("# sweet, but not much\n", changed, StringComparison.Ordinal);
        Assert.All(Added(Own, changed), line => Assert.Contains("order:", line, StringComparison.Ordinal));
    }

    [Fact]
    public void AStepMoved_TakesItsLinesAlong()
    {
        var changed = RecipeText.Change(Own, recipe => recipe with
        {
            Steps = [recipe.Steps[1], recipe.Steps[0], .. recipe.Steps.Skip(2)],
        }).Text;
        Assert.Equal(Own.Split('\n').Order(StringComparer.Ordinal), changed.Split('\n').Order(StringComparer.Ordinal));
        Assert.NotEqual(Own, changed);
    }

    [Fact]
    public void EveryWayOut_OfTheCorpus_WritesLessThanABlock()
    {
        const int MostLines = 12;
        var largest = 0;
        foreach (var (name, text) in SoundAndFaulty.Sound.Select(one => (one.Key, one.Value)).Concat(SoundAndFaulty.Faults.Select(fault => (fault.Id, fault.Text))))
        {
            var noted = Noted(text);
            foreach (var remedy in SoundAndFaulty.FindingsIn(noted).SelectMany(finding => Engine.Remedies.Remedies.For(finding, SoundAndFaulty.RecipeOf(noted))).DistinctBy(remedy => remedy.Id))
            {
                var changed = remedy.CarryOut(noted);
                var added = Added(noted, changed).Count();
                largest = Math.Max(largest, added);
                Assert.True(added <= MostLines, $"{name}, {remedy.Id}: {added} lines\n{string.Join('\n', Added(noted, changed))}");
                // What is written is what a writer who rewrites everything would mean.
                if (remedy.Change is { } change)
                {
                    var whole = RecipeText.Write(RecipeText.Read(RecipeText.Write(change(RecipeText.Read(noted).Recipe!))).Recipe!);
                    Assert.Equal(whole, RecipeText.Write(RecipeText.Read(changed).Recipe!));
                }
            }
        }

        output.WriteLine($"at most {largest} lines written");
    }

    /// <summary>The text with a gap and a remark in its own way at every third line.</summary>
    private static string Noted(string text)
    {
        var inBlock = false;
        return string.Join('\n', text.Split('\n').Select((line, i) =>
        {
            inBlock = line.TrimEnd().EndsWith('|') || (inBlock && (line.Length == 0 || line.StartsWith("      ", StringComparison.Ordinal)));
            return inBlock || line.Length == 0 || i % 3 != 0 || line.Contains('#') ? line : line + $"     # note {i}";
        }));
    }

    private static IEnumerable<string> Added(string before, string after)
    {
        var there = before.Split('\n').GroupBy(line => line).ToDictionary(group => group.Key, group => group.Count());
        foreach (var line in after.Split('\n'))
        {
            if (there.TryGetValue(line, out var count) && count > 0)
            {
                there[line] = count - 1;
            }
            else
            {
                yield return line;
            }
        }
    }

    private static Recipe With(Recipe recipe, string part, string id, Func<Line, Line> change) => recipe with
    {
        Components = [.. recipe.Components.Select(one => one.Id != part ? one : one with { Lines = [.. one.Lines.Select(line => line.Id == id ? change(line) : line)] })],
    };
}
