using System.Text.RegularExpressions;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>All words of a strip come from the resources or from the author.</summary>
public partial class StripWordsTests
{
    private static readonly Voice Bracketed = new(new(Words.Shipped.Entries.ToDictionary(entry => entry.Key, entry => $"⟦{entry.Value}⟧")), MeasureSystem.Metric);

    [Theory]
    [InlineData("potato-rolls", "winter-cottage")]
    [InlineData("potato-rolls", "summer")]
    [InlineData("hearth-loaf", "home")]
    [InlineData("tin-loaf", "mountain")]
    public void NothingIsHardCoded(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var course = rehearsal.Course();
        string[] known =
        [
            .. rehearsal.Recipe.Steps.SelectMany(step => new[] { step.Name, step.Cue ?? "" }),
            .. rehearsal.Recipe.Components.SelectMany(component => component.Lines.Select(line => line.Name).Append(component.Name)),
            rehearsal.Recipe.Title,
            rehearsal.Recipe.Make!.What,
        ];
        DrawnStrip[] strips =
        [
            new(Picture.Wide(rehearsal, course, Bracketed, new() { Id = "w" })),
            new(Picture.Tall(rehearsal, course, Bracketed, new() { Id = "t" })),
        ];
        Assert.All(strips, strip =>
        {
            StripCases.KeepsApart(strip);
            Assert.Equal([], strip.Paragraphs.Append(strip.Root.Element("title")!.Value).Append(strip.Root.Element("desc")!.Value)
                .Select(text => Left(text, known)).Where(left => left.Any(char.IsLetter)).ToArray());
        });
    }

    [Fact]
    public void EveryKindOfStep_HasAShortWord() =>
        Assert.All(Enum.GetNames<StepKind>(), kind => Assert.NotNull(Words.Shipped.Find("strip-kind." + Voice.Kebab(kind))));

    /// <summary>What stands outside brackets, without what the author wrote and without units. A cut text has lost its closing brackets.</summary>
    private static string Left(string text, string[] known)
    {
        for (var before = ""; before != text;)
        {
            before = text;
            text = Innermost().Replace(text, "");
        }

        foreach (var name in known.Where(name => name.Length > 0).OrderByDescending(name => name.Length))
        {
            text = IsCut(text, name) ? "" : text.Replace(name, "", StringComparison.Ordinal);
        }

        // A cut name that stood behind a shorter one shows only now.
        return Array.Exists(known, name => IsCut(text, name)) ? "" : Units().Replace(text, "");
    }

    private static bool IsCut(string text, string name) => text.EndsWith('…') && text.Length > 3 && name.StartsWith(text[..^1], StringComparison.Ordinal);

    [GeneratedRegex("⟦[^⟦⟧]*(?:⟧|…$)")]
    private static partial Regex Innermost();

    [GeneratedRegex(@"(?<=[\d\u00a0])(?:g|°C|min|h)\b")]
    private static partial Regex Units();
}
