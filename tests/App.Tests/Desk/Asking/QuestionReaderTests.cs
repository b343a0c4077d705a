using System.Text.Json.Nodes;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Json;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Asking;

/// <summary>An address is read as a command line is, and what is refused takes nothing else with it.</summary>
public sealed class QuestionReaderTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    [Theory]
    [InlineData("", new string[0])]
    [InlineData("?kitchen=mountain", new[] { "--kitchen", "mountain" })]
    [InlineData("?kitchen=Kestrel%20cottage,%20winter", new[] { "--kitchen", "winter-cottage" })]
    [InlineData("?kitchen=winter-cottage&dough=26C&free=potato,scald", new[] { "--kitchen", "winter-cottage", "--dough", "26C", "--free", "potato,scald" })]
    [InlineData("?air=17C@22:00,21C@07:00&start=22:00", new[] { "--air", "17C@22:00,21C@07:00", "--start", "22:00" })]
    [InlineData("?altitude=4000ft&oven=static&tap=9C&fridge=4C&proof=26C&ingredients=18C", new[] { "--altitude", "4000ft", "--oven", "static", "--tap", "9C", "--fridge", "4C", "--proof", "26C", "--ingredients", "18C" })]
    [InlineData("?at=butter=20C&at=egg=5C&pour=93C&bowl=scald=steel:300g,warmed&variant=mix=machine&weighed=potato=200g:170g", new[] { "--at", "butter=20C", "--at", "egg=5C", "--pour", "93C", "--bowl", "scald=steel:300g,warmed", "--variant", "mix=machine", "--weighed", "potato=200g:170g" })]
    public void AnAddress_ComesToWhatTheCommandLineSays(string query, string[] options)
    {
        var read = bench.Read(query);
        Assert.Empty(read.Refusals);
        var here = Rehearser.RehearseOverSections(Formula.Balance(Bench.Rolls, Larder.Shipped), Larder.Shipped, read.Request, TestContext.Current.CancellationToken).Rehearsal;
        var mine = JsonNode.Parse(RehearsalJson.Write(Stamp.Of(Bench.Rolls), here, new([], []), new(Words.Shipped, MeasureSystem.Metric), read.Accepted.ChangesKitchen))!.AsObject();
        var theirs = JsonNode.Parse(Run.Of(["rehearse", House.PotatoRolls, "--json", .. options]).Output)!.AsObject();
        mine.Remove("findings");
        theirs.Remove("findings");
        Assert.Equal(theirs.ToJsonString(), mine.ToJsonString());
    }

    [Theory]
    [InlineData("?air=abc", "air")]
    [InlineData("?air=99C", "air")]
    [InlineData("?air=17", "air")]
    [InlineData("?air=17C&air=18C", "air")]
    [InlineData("?air=17C@22:00", "air")]
    [InlineData("?air=17C@22:00&start=late", "start")]
    [InlineData("?oven=gas", "oven")]
    [InlineData("?dough=26C", "dough")]
    [InlineData("?free=potato", "free")]
    [InlineData("?dough=26C&free=chalk", "free")]
    [InlineData("?dough=hot&free=potato", "dough")]
    [InlineData("?at=butter", "at")]
    [InlineData("?at=chalk=5C", "at")]
    [InlineData("?pour=97C&altitude=2000m", "pour")]
    [InlineData("?tap=", "tap")]
    public void ARefusedValue_IsToldInTheWordsOfTheCommandLine_AndTheRestIsUsed(string query, string option)
    {
        var read = bench.Read(query + "&fridge=4C");
        Assert.All(read.Refusals, refusal => Assert.Equal(option, refusal.Option));
        Assert.Equal(4, read.Kitchen.Fridge.Celsius);

        string[] options = [.. read.Accepted.Items.Select(item => $"--{item.Name}={item.Value}")];
        string[] asked = [.. Microsoft.AspNetCore.WebUtilities.QueryHelpers.ParseQuery(query)
            .SelectMany(pair => pair.Value.Select(value => $"--{pair.Key}={value}"))];
        Assert.Equal(0, Run.Of(["rehearse", House.PotatoRolls, .. options]).ExitCode & ~1);
        var refused = Run.Of(["rehearse", House.PotatoRolls, .. asked]);
        Assert.Equal(2, refused.ExitCode);
        var words = Squeezed(refused.Messages);
        Assert.NotEmpty(read.Refusals);
        Assert.Contains(read.Refusals, refusal => words.Contains(Squeezed(AsTyped(refusal.Message, option)), StringComparison.Ordinal) && words.Contains(Squeezed(AsTyped(refusal.WayOut, option)), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("?colour=blue")]
    [InlineData("?json=1")]
    [InlineData("?why=all")]
    [InlineData("?--air=17C")]
    [InlineData("?kitchen=../recipes/potato-rolls")]
    [InlineData("?kitchen=/etc/passwd")]
    [InlineData("?kitchen=")]
    [InlineData("?measures=stone")]
    [InlineData("?air=--json")]
    [InlineData("?air=%00%ff%3Cscript%3E")]
    [InlineData("?=&&==&%")]
    public void WhatMeansNothing_IsRefused_AndHomeIsShown(string query)
    {
        var read = bench.Read(query);
        Assert.NotEmpty(read.Refusals);
        Assert.All(read.Refusals, refusal => Assert.True(refusal.Message.Length > 10 && refusal.WayOut.Length > 5));
        Assert.Null(read.Request.Kitchen);
        Assert.Empty(read.Accepted.Items);
    }

    [Fact]
    public void EndlessQuestions_AreCutOff()
    {
        var read = bench.Read("?" + string.Join('&', Enumerable.Range(0, 2000).Select(i => $"at=butter={i}C")));
        Assert.Equal(2000, read.Refusals.Select(refusal => refusal.Typed).Distinct().Count() + read.Accepted.Items.Count);
        Assert.Single(read.Accepted.Items);
    }

    [Fact]
    public void OwnKitchens_GoByTheirNameInTheBook()
    {
        bench.WriteKitchen("boat", "doughwright: 1\nkitchen: The boat\nair: 18 C\n");
        var read = bench.Read("?kitchen=boat");
        Assert.Equal(18, read.Kitchen.Air.At(Duration.Zero).Celsius);
        Assert.Equal("boat", read.Named);
        Assert.Contains(bench.Folder.Book + ":boat", read.CommandLine, StringComparison.Ordinal);
    }

    [Fact]
    public void AKitchenThatCannotBeRead_SaysItsLine()
    {
        bench.WriteKitchen("torn", "doughwright: 1\nkitchen: Torn\nair: 18 C\nnonsense\n");
        var refusal = Assert.Single(bench.Read("?kitchen=torn").Refusals);
        Assert.Contains("line 4", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void TheCommandLine_IsShownAsItIsTyped() => Assert.Equal(
        $"./doughwright rehearse {bench.Shelf.RecipeTexts.FileOf("potato-rolls")} --kitchen mountain --at 'butter=20 C' --dough 26C --free potato,scald",
        bench.Read("?kitchen=mountain&dough=26C&free=potato,scald&at=butter=20%20C").CommandLine);

    /// <summary>The command line would read its own text under that name.</summary>
    [Fact]
    public void AKitchenOfAShippedName_GoesByItsFile_OnceItIsAnother()
    {
        Assert.EndsWith("--kitchen mountain", bench.Read("?kitchen=mountain").CommandLine, StringComparison.Ordinal);
        bench.WriteKitchen("mountain", "doughwright: 1\nkitchen: Mine\nair: 11 C\n");
        var read = bench.Read("?kitchen=mountain");
        Assert.EndsWith("--kitchen " + bench.Shelf.KitchenTexts.FileOf("mountain"), read.CommandLine, StringComparison.Ordinal);
        var said = JsonNode.Parse(Run.Of([.. read.CommandLine.Split(' ')[1..], "--json"]).Output)!;
        Assert.Equal(read.Kitchen.Tap.Celsius, (double)said["kitchen"]!["tapCelsius"]!);
        Assert.Equal(11, (double)said["kitchen"]!["airCelsius"]!);
    }

    [Fact]
    public void ANameWithBlanks_IsQuotedForTheShell()
    {
        bench.WriteKitchen("my boat", "doughwright: 1\nkitchen: The boat\nair: 18 C\n");
        Assert.EndsWith($"--kitchen '{bench.Shelf.KitchenTexts.FileOf("my boat")}'", bench.Read("?kitchen=my%20boat").CommandLine, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?kitchen=MOUNTAIN")]
    [InlineData("?kitchen=Kestrel%20cottage,%20heated")]
    public void AKitchenHoweverItIsAskedFor_IsTheOneOfItsFile(string query) => Assert.Equal("mountain", bench.Read(query).Named);

    [Theory]
    [InlineData("?air=abc", "Room temperature: ")]
    [InlineData("?altitude=9000m", "Height above the sea: ")]
    [InlineData("?oven=gas", "Oven kind: ")]
    [InlineData("?tap=1C&tap=2C", "Tap water temperature is given more than once")]
    public void ARefusal_NamesTheField(string query, string begins)
    {
        var refusal = Assert.Single(bench.Read(query).Refusals);
        Assert.StartsWith(begins, refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("--", refusal.Message + refusal.WayOut, StringComparison.Ordinal);
    }

    /// <summary>What the desk calls by its field, the command line calls by its option; another that is told of stands in brackets.</summary>
    private static string AsTyped(string words, string option) => Question.Known.Aggregate(
        words.Replace(Words.Shipped[FieldNames.KeyOf(option)], "--" + option, StringComparison.Ordinal),
        (told, name) => told.Replace($"({Words.Shipped[FieldNames.KeyOf(name)]})", $"(--{name})", StringComparison.Ordinal));

    private static string Squeezed(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
