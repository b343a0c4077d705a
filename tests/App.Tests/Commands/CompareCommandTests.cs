using System.Text.Json;
using Doughwright.Book;
using Doughwright.Book.Papers;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Commands;

/// <summary>compare FILE FILE: what stands on the page, what is refused, and states of a book.</summary>
public sealed class CompareCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("compare-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Changed(params ReadOnlySpan<(string Was, string Now)> changes)
    {
        var text = File.ReadAllText(House.PotatoRolls);
        foreach (var (was, now) in changes)
        {
            Assert.Contains(was, text, StringComparison.Ordinal);
            text = text.Replace(was, now, StringComparison.Ordinal);
        }

        var file = Path.Join(folder, "changed.yaml");
        File.WriteAllText(file, text);
        return file;
    }

    private string Sweeter => Changed(("sugar: 30 g", "sugar: 60 g"), ("cue: golden all over", "cue: dark all over"), ("170 C fan", "180 C fan"), ("    fold: at 45 min, 2 min by hand\n", ""));

    private static string Plain(Run run) => run.Output.Replace('\u00a0', ' ');

    [Theory]
    [InlineData("compare-sweeter")]
    [InlineData("compare-sweeter-in-the-cottage", "--kitchen", "winter-cottage", "--measures", "us")]
    public void Page_IsAsApproved(string name, params string[] options) =>
        Golden.Check(name, Run.Of(["compare", House.PotatoRolls, Sweeter, .. options]).Output.Replace(House.PotatoRolls, "rolls.yaml", StringComparison.Ordinal).Replace(Path.Join(folder, "changed.yaml"), "sweeter.yaml", StringComparison.Ordinal));

    [Fact]
    public void ARecipeBesideItself_HasNothingToTell() =>
        Assert.Contains("Nothing that a baker would compare.", Plain(Run.Of("compare", House.PotatoRolls, House.PotatoRolls)), StringComparison.Ordinal);

    /// <summary>Where each goes by its own measurements, its figures are those of "rehearse".</summary>
    [Fact]
    public void Figures_AreThoseOfRehearse()
    {
        var baked = Changed(("sugar: 30 g", "sugar: 60 g"), ("measured: 105 min", "measured: 125 min"));
        using var compared = JsonDocument.Parse(Run.Of("compare", House.PotatoRolls, baked, "--json").Output);
        using var rehearsed = JsonDocument.Parse(Run.Of("rehearse", baked, "--json").Output);
        Assert.Equal("each", compared.RootElement.GetProperty("measuredBy").GetString());
        var total = compared.RootElement.GetProperty("run").EnumerateArray().Single(figure => figure.GetProperty("figure").GetString() == "total");
        Assert.Equal(rehearsed.RootElement.GetProperty("totalMinutes").GetDouble(), total.GetProperty("second").GetDouble());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void TwoRecipes_AreWanted(int count)
    {
        var run = Run.Of(["compare", .. Enumerable.Repeat(House.PotatoRolls, count)]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("This needs 2 recipes", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void StandardInput_CanBeOnlyOne()
    {
        Assert.Equal(2, Run.Of("compare", "-", "-").ExitCode);
        Assert.Equal(0, Run.WithInput(File.ReadAllText(House.PotatoRolls), "compare", House.PotatoRolls, "-").ExitCode);
    }

    [Fact]
    public void TextNotUnderstood_IsToldWithItsFile()
    {
        var run = Run.Of("compare", House.PotatoRolls, House.Text("potato-rolls-twelve-faults.yaml"));
        Assert.Equal(3, run.ExitCode);
        Assert.Contains("potato-rolls-twelve-faults.yaml: ", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(typeof(Aspect))]
    [InlineData(typeof(FormulaFigure))]
    [InlineData(typeof(Cover))]
    [InlineData(typeof(Where))]
    [InlineData(typeof(BakedOn))]
    [InlineData(typeof(VesselShape))]
    [InlineData(typeof(ComponentKind))]
    [InlineData(typeof(WarmthKind))]
    [InlineData(typeof(HearthMaterial))]
    [InlineData(typeof(OvenSteam))]
    public void EveryMemberThatCanDiffer_HasWords(Type list) =>
        Assert.All(Enum.GetNames(list), name => Assert.NotNull(Words.Shipped.Find($"{Voice.Kebab(list.Name)}.{Voice.Kebab(name)}")));

    /// <summary>Every demo recipe beside every other: all that can differ has words, and turned round the same rows stand there.</summary>
    [Fact]
    public void AnyTwoRecipes_CanBeCompared()
    {
        var recipes = Directory.GetFiles(House.PathTo("demo", "recipes"));
        foreach (var (first, second) in recipes.Zip(recipes.Skip(1)))
        {
            using var there = JsonDocument.Parse(Run.Of("compare", first, second, "--kitchen", "mountain", "--json").Output);
            using var back = JsonDocument.Parse(Run.Of("compare", second, first, "--kitchen", "mountain", "--json").Output);
            Assert.Equal(there.RootElement.GetProperty("differences").GetArrayLength(), back.RootElement.GetProperty("differences").GetArrayLength());
            Assert.True(there.RootElement.GetProperty("differences").GetArrayLength() > 5);
        }
    }

    [Fact]
    public void StatesOfABook_GoByTheirNumbers()
    {
        var path = Path.Join(folder, "book.db");
        long first;
        using (var book = AuthorsBook.Open(path, TimeProvider.System))
        {
            var text = File.ReadAllText(House.PotatoRolls);
            book.Papers.Lay(PaperSort.Recipe, ["rolls"], text, "Laid");
            first = book.Papers.Find(PaperSort.Recipe, "rolls")!.State;
            book.Papers.Write(PaperSort.Recipe, "rolls", first, text.Replace("sugar: 30 g", "sugar: 40 g", StringComparison.Ordinal), "More sugar");
        }

        var told = Plain(Run.Of("compare", $"{path}:rolls@{first}", $"{path}:rolls"));
        Assert.Contains("7.5 % (30 g)", told, StringComparison.Ordinal);
        Assert.Contains("10.0 % (40 g)", told, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("rehearse", $"{path}:rolls@{first}").ExitCode);
        foreach (var wrong in new[] { "0", "99", "now", "" })
        {
            var run = Run.Of("rehearse", $"{path}:rolls@{wrong}");
            Assert.Equal(2, run.ExitCode);
            Assert.Contains("was never in a state", run.Messages, StringComparison.Ordinal);
        }

        Assert.Contains("Nothing is called", Run.Of("rehearse", $"{path}:buns@{first}").Messages, StringComparison.Ordinal);

        // What is off the shelf is not gone, and the answer says so.
        using (var book = AuthorsBook.Open(path, TimeProvider.System))
        {
            Assert.True(book.Papers.TakeAway(PaperSort.Recipe, "rolls"));
        }

        foreach (var address in new[] { $"{path}:rolls", $"{path}:rolls@{first}" })
        {
            var run = Run.Of("rehearse", address);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains("“rolls” was taken away", run.Messages, StringComparison.Ordinal);
        }
    }
}
