using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Sides;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Sides;

/// <summary>Why the figures of two recipes differ: every change alone, and what is left over said to be left over.</summary>
public class CausesTests
{
    private static readonly Recipe Rolls = Read(Texts.PotatoRolls);

    private static Recipe Read(string text) => RecipeText.Read(text).Recipe!;

    private static Recipe With(params (string Piece, string Instead)[] changes) =>
        Read(changes.Aggregate(Texts.PotatoRolls, (text, change) => text.Replace(change.Piece, change.Instead, StringComparison.Ordinal)));

    private static (Causes Causes, Consequences Come) Of(Recipe first, Recipe second)
    {
        var (one, other) = (Formula.Balance(first, Larder.Shipped), Formula.Balance(second, Larder.Shipped));
        var differences = RecipeDifferences.Between(one, other);
        var come = Consequences.Between(one, other, Larder.Shipped, second.Home, TestedSide.Of(first, second, Tested.First));
        return (Causes.Of(come, differences, Larder.Shipped, second.Home), come);
    }

    public static TheoryData<string, string> Pairs => new()
    {
        { "sugar: 30 g|sugar: 60 g", "" },
        { "sugar: 30 g|sugar: 60 g", "butter: 50 g|butter: 20 g" },
        { "instant yeast: 4 g|instant yeast: 6 g", "ends: at 2 times its volume|ends: at 2.5 times its volume" },
        { "hands: 12 min|hands: 20 min", "oven: 170 C fan|oven: 190 C fan" },
        { "    salt: 7 g\n|", "way: by hand|way: machine" },
    };

    /// <summary>Nothing is left untold and nothing told twice, whatever the changes do to each other.</summary>
    [Theory]
    [MemberData(nameof(Pairs))]
    public void SharesAndWhatIsTogether_AddUpToTheWhole(string one, string other)
    {
        var second = With([.. new[] { one, other }.Where(change => change.Length > 0).Select(change => (change.Split('|')[0], change.Split('|')[1]))]);
        var (causes, come) = Of(Rolls, second);
        Assert.All(come.Run.Where(figure => figure.By is not null), figure => Assert.Equal(figure.By!.Value, causes.Of(figure.Figure).Sum(cause => cause.By), 5));
        Assert.All(come.Formulas.Where(figure => figure.By is not null), figure => Assert.Equal(figure.By!.Value, causes.Of(figure.Figure).Sum(cause => cause.By), 5));
        Assert.Contains(come.Run, figure => causes.Of(figure.Figure).Count > 0);
    }

    [Fact]
    public void OneChange_IsAllOfIt_AndNothingIsTogether()
    {
        var (causes, come) = Of(Rolls, With(("sugar: 30 g", "sugar: 60 g")));
        var bulk = new Figure(FigureKind.Minutes, "bulk");
        var cause = Assert.Single(causes.Of(bulk));
        Assert.Equal((Aspect.Amount, "sugar"), (cause.Difference!.Aspect, cause.Difference.Line));
        Assert.Equal(come.Find(FigureKind.Minutes, "bulk")!.By!.Value, cause.By, 6);
        Assert.True(cause.By > 5, $"{cause.By} min");
    }

    /// <summary>More yeast shortens a rise by a share of its time, and more sugar lengthens it by one: what sugar adds is less in the shorter rise, so both at once come to less than the two alone.</summary>
    [Fact]
    public void ChangesThatActOnEachOther_LeaveSomethingTogether()
    {
        var causes = Of(Rolls, With(("instant yeast: 4 g", "instant yeast: 8 g"), ("sugar: 30 g", "sugar: 60 g"))).Causes.Of(new Figure(FigureKind.Minutes, "bulk"));
        Assert.Equal([-1, 1], causes.Where(cause => cause.Difference is not null).Select(cause => Math.Sign(cause.By)).Order());
        Assert.True(Assert.Single(causes, cause => cause.Difference is null).By < 0);
        Assert.Null(causes[^1].Difference);
    }

    [Fact]
    public void WordsAndNames_AreNotTried()
    {
        var second = With(("golden all over", "dark all over"), ("name: Bulk", "name: Let it rise"), ("title: Potato rolls", "title: Rolls"), ("  - tape", "  - string"));
        var differences = RecipeDifferences.Between(Rolls, second, Larder.Shipped);
        Assert.True(differences.Count >= 4);
        Assert.Equal(0, Causes.Rehearsals(differences));
    }

    /// <summary>In a dough of twice the size every line weighs twice as much; that is one cause, and what was changed besides is tried in the larger dough.</summary>
    [Fact]
    public void AnotherSize_IsOneCause_AndTheRestIsTriedInIt()
    {
        var twice = Rolls with
        {
            Components =
            [
                .. Rolls.Components.Select(part => part with
                {
                    Lines =
                    [
                        .. part.Lines.Select(line => line.Mass is { } mass
                            ? line with { Mass = Mass.FromGrams(mass.Grams * (line.Id == "sugar" ? 4 : 2)), Typed = FormattableString.Invariant($"{mass.Grams * (line.Id == "sugar" ? 4 : 2)} g") }
                            : line),
                    ],
                }),
            ],
        };
        var (causes, come) = Of(Rolls, twice);
        var dough = causes.Of(FormulaFigure.Dough);
        Assert.Equal([Aspect.Scale, Aspect.Amount], dough.Select(cause => cause.Difference!.Aspect));
        Assert.Equal([801, 60], dough.Select(cause => Math.Round(cause.By)));
        Assert.Equal(come.Formulas.First(figure => figure.Figure == FormulaFigure.Dough).By!.Value, dough.Sum(cause => cause.By), 6);
    }

    [Fact]
    public void ARecipeAndItself_HaveNoCauses()
    {
        var (causes, come) = Of(Rolls, Rolls);
        Assert.All(come.Run, figure => Assert.Empty(causes.Of(figure.Figure)));
    }
}
