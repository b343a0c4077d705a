using System.Text.RegularExpressions;
using Doughwright.App.Text;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Wording;

/// <summary>
/// A language in which every sentence of an entry stands in brackets. What is printed outside brackets was written into the code, unless it is the author's own text, a
/// name of the command line, or a unit.
/// </summary>
public partial class PseudoLanguageTests
{
    private static readonly Words Bracketed = new(Words.Shipped.Entries.ToDictionary(
        entry => entry.Key,
        entry => $"⟦{entry.Value.Replace(". ", "⟧. ⟦", StringComparison.Ordinal)}⟧"));

    private static readonly Voice Voice = new(Bracketed, MeasureSystem.Metric);

    [Fact]
    public void Rehearsal() => NothingIsHardCoded(RehearsalText.Write(Samples.Rehearsal, Samples.Request, new(Samples.Findings, [(Samples.Findings[1], "")]), ["bulk"], Voice));

    [Fact]
    public void Formula() => NothingIsHardCoded(Run.WithWords(Bracketed, "formula", House.PotatoRolls).Output);

    [Fact]
    public void Resize()
    {
        NothingIsHardCoded(Run.WithWords(Bracketed, "resize", House.PotatoRolls, "--pieces", "24").Messages);
        NothingIsHardCoded(Run.WithWords(Bracketed, "resize", "--help").Output);
    }

    [Fact]
    public void Place() => NothingIsHardCoded(Run.WithWords(Bracketed, "place", House.PotatoRolls, "--to", "26C", "--kitchen", "winter-cottage").Output);

    [Fact]
    public void Findings() => NothingIsHardCoded(FindingsText.Write("Potato rolls", Samples.Findings, Voice, quote: false));

    [Fact]
    public void Swap()
    {
        NothingIsHardCoded(Run.WithWords(Bracketed, "swap", House.PotatoRolls, "--replace", "butter=milk", "--replace", "strong white flour=strong white flour").Messages);
        NothingIsHardCoded(Run.WithWords(Bracketed, "swap", House.PotatoRolls).Output);
    }

    [Fact]
    public void Help()
    {
        NothingIsHardCoded(Run.WithWords(Bracketed).Output);
        NothingIsHardCoded(Run.WithWords(Bracketed, "rehearse", "--help").Output);
    }

    /// <summary>The words of a case are its author's.</summary>
    [Theory]
    [InlineData("preferment-guide/poolish.yaml")]
    [InlineData("zhang-2005/small-dome-loaf.yaml")]
    [InlineData("standard-atmosphere/five-kilometres.yaml")]
    public void Evidence(string name)
    {
        var text = House.PathTo("tests", "data", "published", name);
        NothingIsHardCoded(Run.WithWords(Bracketed, "evidence", text).Output, [.. Letters().Matches(File.ReadAllText(text)).Select(word => word.Value).Distinct()]);
        NothingIsHardCoded(Run.WithWords(Bracketed, "evidence", "--help").Output);
    }

    [Fact]
    public void Faults() => NothingIsHardCoded(Run.WithWords(Bracketed, "rehearse", House.PotatoRolls, "--aer", "1", "--air", "17", "--bowl", "x=y", "--dough", "99C").Messages);

    private static void NothingIsHardCoded(string output, params string[] own)
    {
        // Lines are wrapped inside brackets, so they are looked at as one text.
        var rest = output;
        for (var before = ""; before != rest;)
        {
            before = rest;
            rest = Innermost().Replace(rest, " ");
        }

        Assert.DoesNotContain('⟦', rest);
        // Names may be wrapped, so they are looked at word by word as well.
        foreach (var known in own.Concat(Known()).Concat(Known().SelectMany(name => name.Split(' '))))
        {
            rest = Regex.Replace(rest, $@"(?<!\p{{L}}){Regex.Escape(known)}(?!\p{{L}})", " ");
        }

        rest = Units().Replace(Option().Replace(rest, " "), " ");
        Assert.Empty(Regex.Matches(rest, @"\p{L}+").Select(match => match.Value).Distinct());
    }

    /// <summary>The author's words, longest first.</summary>
    private static IEnumerable<string> Known()
    {
        var recipe = Samples.Recipe;
        return recipe.Components.SelectMany(component => component.Lines.Select(line => line.Name).Append(component.Name))
            .Concat(recipe.Steps.Select(step => step.Name))
            .Append(recipe.Title)
            .OrderByDescending(name => name.Length);
    }

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Letters();

    [GeneratedRegex("⟦[^⟦⟧]*⟧")]
    private static partial Regex Innermost();

    [GeneratedRegex(@"(?<=[\d\u00a0\s/])(?:g|kg|°C|°F|min|h|d|kPa|m|cm|mm|oz|lb|ft|in)(?=\W|$)")]
    private static partial Regex Units();

    [GeneratedRegex(@"--[a-z]+")]
    private static partial Regex Option();
}
