using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals.Differences;

/// <summary>Laws of what moved a figure, over every recipe of the house and pairs of kitchens.</summary>
public class DifferenceLawTests
{
    private static readonly string[] Recipes = [.. Texts.Recipes.Where(path => !path.Contains("twelve-faults", StringComparison.Ordinal))];

    private static readonly Kitchen Warmed = new()
    {
        Name = "A cold hut with a warm box",
        Air = AirProfile.Of([(Duration.Zero, Celsius(12)), (Duration.FromHours(2), Celsius(19))]),
        Altitude = Length.FromMetres(2100),
        Tap = Celsius(6),
        Fridge = Celsius(3),
        Ingredients = Celsius(14),
        ProofingPlace = Celsius(28),
    };

    /// <summary>Recipes, and two requests by their number in <see cref="Requests"/>.</summary>
    public static TheoryData<string, int, int> Pairs
    {
        get
        {
            var pairs = new TheoryData<string, int, int>();
            foreach (var recipe in Recipes)
            {
                for (var first = 0; first < 7; first++)
                {
                    pairs.Add(recipe, first, (first + 1) % 7);
                    pairs.Add(recipe, first, (first + 3) % 7);
                }
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Parts_AddUpToTheDifference(string recipe, int first, int second)
    {
        var differences = Between(recipe, first, second);
        Assert.NotEmpty(differences.All);
        foreach (var difference in differences.All.Where(one => one.By is not null))
        {
            Assert.Equal(difference.By!.Value, difference.Parts.Sum(part => part.By), 1e-9);
            Assert.DoesNotContain(difference.Parts, part => part.By == 0 || part.Moves.Count == 0);
        }
    }

    /// <summary>The figures are those of the two rehearsals with all their lanes, and every one of them is there.</summary>
    [Theory]
    [MemberData(nameof(Pairs))]
    public void Figures_AreThoseOfTheRehearsals(string recipe, int first, int second)
    {
        var formula = FormulaOf(recipe);
        var differences = Between(recipe, first, second);
        foreach (var (number, pick) in new (int, Func<Difference, double?>)[] { (first, one => one.First), (second, one => one.Second) })
        {
            var rehearsal = Rehearser.Rehearse(formula, Larder.Shipped, Requests(formula.Recipe)[number]);
            double? Told(FigureKind kind, string of = "") => pick(differences.Find(kind, of)!);
            Assert.Equal(rehearsal.Total?.Likely.Minutes, Told(FigureKind.Total));
            Assert.Equal(rehearsal.Hands.Minutes, Told(FigureKind.Hands));
            Assert.Equal(rehearsal.Boils.Celsius, Told(FigureKind.Boils));
            Assert.All(rehearsal.Components, component => Assert.Equal(component.Mixed?.Likely.Celsius, Told(FigureKind.Mixed, component.Id)));
            Assert.All(rehearsal.Steps, step =>
            {
                Assert.Equal(step.Start?.Minutes, Told(FigureKind.Start, step.Id));
                Assert.Equal(step.Time?.Likely.Minutes, Told(FigureKind.Minutes, step.Id));
                Assert.Equal(step.StartTemperature?.Celsius, Told(FigureKind.StartTemperature, step.Id));
                Assert.Equal(step.EndTemperature?.Celsius, Told(FigureKind.EndTemperature, step.Id));
            });
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void WhatIsNotThere_HasAReason_AndNoParts(string recipe, int first, int second) =>
        Assert.All(Between(recipe, first, second).All, difference =>
        {
            Assert.Equal(difference.First is null, difference.FirstUnknown is not null);
            Assert.Equal(difference.Second is null, difference.SecondUnknown is not null);
            Assert.True(difference.By is not null || difference.Parts.Count == 0);
        });

    [Fact]
    public void TheSameTwice_MovesNothing() => Assert.All(Recipes, recipe =>
        Assert.All(Between(recipe, 2, 2).All, difference => Assert.Empty(difference.Parts)));

    /// <summary>The seven kitchens of the laws, some with more asked than a kitchen.</summary>
    private static IReadOnlyList<Request> Requests(Recipe recipe) =>
    [
        Request.Home,
        new() { Kitchen = Kitchen("mountain") },
        new() { Kitchen = Kitchen("winter-cottage") },
        new() { Kitchen = Kitchen("winter-cottage"), Dough = Celsius(26), Free = Free(recipe) },
        new() { Kitchen = Kitchen("summer"), Dough = Celsius(25) },
        new() { Kitchen = Warmed },
        new() { Kitchen = Kitchen("classroom"), At = Free(recipe).ToDictionary(line => line, _ => Celsius(35)), Pour = Celsius(90) },
    ];

    private static string[] Free(Recipe recipe) => recipe.FindComponent("scald") is not null && recipe.FindComponent("potato") is not null ? ["potato", "scald"] : [];

    private static Kitchen Kitchen(string name) => KitchenText.Read(Texts.Read($"demo/kitchens/{name}.yaml")).Kitchen!;

    private static Formula FormulaOf(string recipe) => Formula.Balance(RecipeText.Read(Texts.Read(recipe)).Recipe!, Larder.Shipped);

    private static RehearsalDifferences Between(string recipe, int first, int second)
    {
        var formula = FormulaOf(recipe);
        var requests = Requests(formula.Recipe);
        return RehearsalDifferences.Between(formula, Larder.Shipped, requests[first], requests[second]);
    }

    private static Temperature Celsius(double celsius) => Temperature.FromCelsius(celsius);
}
