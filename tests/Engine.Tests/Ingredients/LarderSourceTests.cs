using System.Globalization;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Tests.House;

namespace Doughwright.Engine.Tests.Ingredients;

/// <summary>Every figure of the larder, read again from the source (extract of USDA SR28 in tests/data/usda-sr28) or worked out again by its rule.</summary>
public class LarderSourceTests
{
    private static readonly IReadOnlyList<Ingredient> Rows = Larder.Shipped.Ingredients;
    private static readonly Dictionary<string, Dictionary<string, string>> Source = Read("composition.tsv").ToDictionary(row => row["ndb"]);

    private static readonly (string Column, Func<Composition, double?> Figure)[] Copied =
    [
        ("water", c => c.Water), ("protein", c => c.Protein), ("fat", c => c.Fat), ("carbohydrate", c => c.Carbohydrate),
        ("sugars", c => c.Sugars), ("fibre", c => c.Fibre), ("ash", c => c.Ash), ("alcohol", c => c.Alcohol),
    ];

    /// <summary>Rows of the source whose parts do not add up to 100 ± 2, as the source has them (validation of the ingredient sheet).</summary>
    private static readonly string[] DoNotAddUp =
        ["baking-soda", "vinegar-cider", "vinegar-distilled", "vinegar-red-wine", "vinegar-balsamic", "pepper-black", "pepper-white"];

    private static IEnumerable<Ingredient> Obtained(params string[] ways) => Rows.Where(row => ways.Contains(row.Evidence.Obtained));

    [Fact]
    public void RowsWithFigures_AreAtLeastThreeHundred() => Assert.InRange(Rows.Count(row => row.HasFigures), 300, 1000);

    [Fact]
    public void EveryFigure_StandsInTheSource_AndEveryBlankIsBlankThere() => Assert.All(Obtained("read", "proxy"), row =>
    {
        var source = Source[row.Evidence.Record!];
        Assert.All(Copied, each => Assert.Equal(NumberOf(source, each.Column), each.Figure(row.Composition)));
        Assert.Equal(SaltOf(NumberOf(source, "sodium"), row.Evidence.Note), row.Composition.Salt);
    });

    /// <summary>Salt is sodium x 2.54, but for raising agents: theirs is that of bicarbonate and phosphates.</summary>
    private static double? SaltOf(double? sodium, string note) =>
        note.Contains("its sodium is no salt", StringComparison.Ordinal) ? 0
        : note.Contains("how much of each is not known", StringComparison.Ordinal) ? null
        : sodium is { } milligrams ? Math.Round(milligrams * 2.54 / 1000, 4) : null;

    [Fact]
    public void RaisingAgents_HoldNoSalt()
    {
        Assert.All(["baking-soda", "baking-powder-sas", "baking-powder-phosphate", "baking-powder-low-sodium", "cream-of-tartar"], id =>
            Assert.Equal(0, Larder.Shipped.WithId(id)!.Composition.Salt));
        Assert.Null(Larder.Shipped.WithId("wheat-flour-self-rising-enriched")!.Composition.Salt);
        Assert.Equal(6, Rows.Count(row => row.Evidence.Note.Contains("its sodium is no salt", StringComparison.Ordinal) || row.Evidence.Note.Contains("how much of each", StringComparison.Ordinal)));
    }

    [Fact]
    public void Lactose_IsTheSources_OrDerivedByARuleThatTheNoteNames() => Assert.All(Obtained("read", "proxy"), row =>
    {
        var (read, is_) = (NumberOf(Source[row.Evidence.Record!], "lactose"), row.Composition.Lactose);
        var note = row.Evidence.Note;
        if (read is not null)
        {
            Assert.Equal(read, is_);
        }
        else if (note.Contains("nothing from milk", StringComparison.Ordinal))
        {
            Assert.Equal(0, is_);
            Assert.DoesNotContain(row.Allergens, code => code.StartsWith("milk", StringComparison.Ordinal));
        }
        else if (note.Contains("all its sugar is milk sugar", StringComparison.Ordinal) || note.Contains("no sugars in it", StringComparison.Ordinal))
        {
            Assert.Equal(row.Composition.Sugars, is_);
        }
        else
        {
            Assert.Null(is_);
        }
    });

    /// <summary>The parts of a mixture stand in the note, its ash in the middle of the window it is made for.</summary>
    [Theory]
    [InlineData("wheat-flour-812", "wheat-flour-bread-unenriched", 82, "wheat-flour-wholemeal", 0.77)]
    [InlineData("wheat-flour-1050", "wheat-flour-bread-unenriched", 59, "wheat-flour-wholemeal", 1.05)]
    [InlineData("wheat-flour-1600", "wheat-flour-bread-unenriched", 14, "wheat-flour-wholemeal", 1.60)]
    [InlineData("rye-flour-997", "rye-flour-light", 75, "rye-flour-medium", 1.00)]
    [InlineData("rye-flour-1150", "rye-flour-light", 32, "rye-flour-medium", 1.20)]
    public void EstimatedFlours_AreTheMixtureTheyNote(string id, string first, double parts, string second, double ash)
    {
        var row = Larder.Shipped.WithId(id)!;
        var mixed = Composition.Mix([(parts, Larder.Shipped.WithId(first)!.Composition), (100 - parts, Larder.Shipped.WithId(second)!.Composition)]);
        Assert.All(Copied, each => Assert.Equal(each.Figure(mixed)!.Value, each.Figure(row.Composition)!.Value, 1e-4));
        Assert.Equal(ash, row.Composition.Ash!.Value / (100 - row.Composition.Water!.Value) * 100, 0.01);
        Assert.Contains(FormattableString.Invariant($"{parts} parts"), row.Evidence.Note, StringComparison.Ordinal);
        Assert.Equal("estimated", row.Evidence.Obtained);
    }

    [Fact]
    public void EveryRow_IsObtainedInOneOfTheKnownWays() => Assert.All(Rows, row =>
    {
        Assert.Contains(row.Evidence.Obtained, (string[])["read", "proxy", "estimated", "no figures", "by definition"]);
        Assert.Equal(row.Evidence.Obtained == "no figures", !row.HasFigures);
        Assert.Equal(row.Evidence.Source == "usda-sr28", row.Evidence is { Date: "2016-05", Record: not null });
    });

    [Fact]
    public void Parts_AddUpToAHundred() => Assert.All(Rows.Where(row => row.HasFigures && !DoNotAddUp.Contains(row.Id)), row =>
    {
        var c = row.Composition;
        Assert.InRange((c.Water + c.Protein + c.Fat + c.Carbohydrate + c.Ash + (c.Alcohol ?? 0)) ?? double.NaN, 98, 102);
        Assert.False(c.Salt > c.Ash + 0.3, $"{row.Id}: salt is a part of the ash");
        Assert.False(c.Lactose > c.Sugars, $"{row.Id}: lactose is a part of the sugars");
    });

    [Fact]
    public void WhatDoesNotAddUp_StillDoesNot_AndSaysSo() => Assert.All(DoNotAddUp, id =>
    {
        var c = Larder.Shipped.WithId(id)!.Composition;
        Assert.False((c.Water + c.Protein + c.Fat + c.Carbohydrate + c.Ash) is >= 98 and <= 102);
        Assert.NotEmpty(Larder.Shipped.WithId(id)!.Evidence.Note);
    });

    /// <summary>Every household weight that is marked as read stands in the source under the same food.</summary>
    [Fact]
    public void EveryMeasureThatIsRead_StandsInTheSource()
    {
        var weights = Read("weights.tsv")
            .Select(row => (row["ndb"], NumberOf(row, "grams") / NumberOf(row, "amount")))
            .ToHashSet();
        var read = Rows.SelectMany(Larder.Shipped.MeasuresOf).Where(measure => measure.Evidence.Obtained == "read").ToArray();
        Assert.InRange(read.Length, 600, 1000);
        Assert.All(read, measure => Assert.Contains((measure.Evidence.Record!, (double?)measure.Mass.Grams), weights));
    }

    /// <summary>What peeling or trimming leaves is what the source does not refuse.</summary>
    [Fact]
    public void Preparing_LeavesWhatTheSourceDoesNotRefuse() => Assert.All(Rows, row =>
    {
        if (Larder.Shipped.PreparationOf(row) is { Step: PreparationStep.Peel or PreparationStep.Trim, Source: "usda-sr28", Factor: { } factor })
        {
            Assert.Equal(1 - (NumberOf(Source[row.Evidence.Record!], "refuse")!.Value / 100), factor, 1e-9);
        }
    });

    /// <summary>Map of the European Union and the United States, typed apart from the larder: tests/data/allergen-map.tsv, with its sources.</summary>
    [Fact]
    public void Allergens_AreThoseOfTheMap()
    {
        var map = Tsv.Read(File.ReadAllText(Tree.PathTo("tests", "data", "allergen-map.tsv"))).Rows.ToLookup(row => row["id"], row => (Eu: row["eu"], Us: row["us"]));
        Assert.All(map, each => Assert.NotNull(Larder.Shipped.WithId(each.Key)));
        Assert.All(Rows, row =>
        {
            Assert.Equal(map[row.Id].Select(each => each.Eu).Where(code => code.Length > 0).Distinct().Order(), row.Allergens.Order());
            Assert.Equal(map[row.Id].Select(each => each.Us).Where(code => code.Length > 0).Distinct().Order(), row.AllergensUnitedStates.Order());
        });
    }

    [Fact]
    public void EveryAllergenCode_HasAName() =>
        Assert.All(Rows.SelectMany(row => row.Allergens.Concat(row.AllergensUnitedStates)), code => Assert.NotEmpty(AllergenNames.Of(code)));

    private static IEnumerable<Dictionary<string, string>> Read(string file)
    {
        var lines = File.ReadAllLines(Tree.PathTo("tests", "data", "usda-sr28", file)).Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split('\t')).ToArray();
        return lines[1..].Select(cells => lines[0].Select((name, i) => (name, cell: i < cells.Length ? cells[i] : "")).ToDictionary(pair => pair.name, pair => pair.cell));
    }

    private static double? NumberOf(Dictionary<string, string> row, string column) =>
        row[column].Length == 0 ? null : double.Parse(row[column], CultureInfo.InvariantCulture);
}
