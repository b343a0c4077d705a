using System.Text.RegularExpressions;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Pictures;

/// <summary>What a picture or table says outside the brackets of the words is a name of the author, a figure or its unit.</summary>
public partial class PicturePseudoLanguageTests
{
    private static readonly Voice Bracketed = new(
        new(Words.Shipped.Entries.ToDictionary(entry => entry.Key, entry => $"⟦{entry.Value.Replace(". ", "⟧. ⟦", StringComparison.Ordinal)}⟧")),
        MeasureSystem.Metric);

    [Fact]
    public void Pictures_SayNothingOfTheirOwn()
    {
        var said = new HashSet<string>();
        foreach (var (name, run) in DemoRuns.All)
        {
            foreach (var step in run.Steps.Where(step => step.Kind == StepKind.Mix))
            {
                var heat = run.HeatOf(step.Id)!;
                said.UnionWith(Letters(TextsOf(HeatPicture.Draw(heat, run, Bracketed, "h")).Concat(TextsOf(HeatTable.Of(heat, run, Bracketed))), run.Recipe));
            }

            var makeup = run.Formula.Makeup()!;
            said.UnionWith(Letters(TextsOf(BalancePicture.Draw(makeup, run.Formula, Bracketed, "b")).Concat(TextsOf(MakeupTable.Of(makeup, run.Formula, Bracketed))), run.Recipe));
            foreach (var rise in run.Course().Rises)
            {
                said.UnionWith(Letters(TextsOf(Publishing.Pictures.Rise.RisePicture.Draw(rise, run.FindStep(rise.Step)!, [], Bracketed, "r")), run.Recipe));
            }

            Assert.NotEmpty(name);
        }

        Assert.Equal([], said.Order());
    }

    [Fact]
    public void EveryMemberThatIsSaid_HasWords()
    {
        string[] keys =
        [
            .. Enum.GetNames<MixingWay>().Select(way => "heat.work." + Voice.Kebab(way)),
            .. Enum.GetNames<Matter>().Select(matter => "makeup." + Voice.Kebab(matter)),
            .. new[] { "same", "later", "earlier" }.SelectMany(slip => new[] { "slips." + slip, "slips.bare-" + slip }),
        ];
        Assert.All(keys, key => Assert.NotNull(Words.Shipped.Find(key)));
    }

    private static IEnumerable<string> TextsOf(string picture)
    {
        var drawn = new Drawn(picture);
        return drawn.Texts.Append(drawn.Title).Append(drawn.Description);
    }

    private static IEnumerable<string> TextsOf(FigureTable table) =>
        table.Heads.SelectMany(head => new[] { head.Text, head.Unit }).Concat(table.Rows.Concat(table.Foot).SelectMany(row => row.Cells.Append(row.Name))).Append(table.Caption);

    private static IEnumerable<string> Letters(IEnumerable<string> texts, Recipe recipe)
    {
        var known = recipe.Components.SelectMany(component => component.Lines.Select(line => line.Name).Append(component.Name))
            .Concat(recipe.Steps.Select(step => step.Name))
            .Concat(recipe.Steps.Select(step => step.Cue ?? ""))
            .SelectMany(name => name.Split(' ', ',', ';', '\''))
            .ToHashSet(StringComparer.OrdinalIgnoreCase);

        // A text that was cut has lost its closing bracket; the cut word is the start of one that is whole elsewhere.
        return texts.Where(text => !text.EndsWith('…')).SelectMany(text => Word().Matches(Unit().Replace(WithoutBrackets(text), " ")).Select(match => match.Value)).Where(word => !known.Contains(word));
    }

    private static string WithoutBrackets(string text)
    {
        for (var before = ""; before != text;)
        {
            before = text;
            text = Innermost().Replace(text, " ");
        }

        return text;
    }

    [GeneratedRegex("⟦[^⟦⟧]*⟧")]
    private static partial Regex Innermost();

    [GeneratedRegex(@"(?<=[\d\u00a0\s]|^)(?:g|°C|min|h)(?=\W|$)")]
    private static partial Regex Unit();

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Word();
}
