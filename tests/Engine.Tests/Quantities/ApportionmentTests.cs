using CsCheck;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Quantities;

/// <summary>Largest remainder, as parliaments use it.</summary>
public class ApportionmentTests
{
    /// <summary>
    /// Hamilton's method on the census of 1790, 60 seats for 15 states: the table of "Hamilton method", electowiki.org (revision 9372), populations
    /// and seats typed from there.
    /// </summary>
    private static readonly (string State, double People, long Seats)[] Census1790 =
    [
        ("Virginia", 630560, 11), ("Massachusetts", 475327, 8), ("Pennsylvania", 432879, 7), ("North Carolina", 353523, 6), ("New York", 331589, 6),
        ("Maryland", 278514, 5), ("Connecticut", 236841, 4), ("South Carolina", 206236, 3), ("New Jersey", 179570, 3), ("New Hampshire", 141822, 2),
        ("Vermont", 85533, 1), ("Georgia", 70835, 1), ("Kentucky", 68705, 1), ("Rhode Island", 68446, 1), ("Delaware", 55540, 1),
    ];

    [Fact]
    public void CensusOf1790_GivesThePublishedSeats()
    {
        var people = Census1790.Sum(state => state.People);
        Assert.Equal(3_615_920, people);
        var seats = Apportionment.Units([.. Census1790.Select(state => state.People * 60 / people)], 60);
        Assert.Equal(Census1790.Select(state => state.Seats), seats);
    }

    [Fact]
    public void Units_AddUpToTheTotal_AndStayWithinOneOfTheirPart() => Gen.Double[0, 5000].Array[1, 20].Sample(parts =>
    {
        var total = (long)Math.Round(parts.Sum(), MidpointRounding.AwayFromZero);
        var units = Apportionment.Units(parts, total);
        Assert.Equal(total, units.Sum());
        Assert.All(units.Zip(parts), pair => Assert.InRange(pair.First - pair.Second, -1, 1));
    });

    /// <summary>The rule of quota holds for whatever total; then the larger parts give or take first.</summary>
    [Fact]
    public void AnyTotal_IsMet_AndNothingGoesBelowZero() => Gen.Select(Gen.Double[0, 50].Array[1, 8], Gen.Int[0, 600]).Sample((parts, total) =>
    {
        var units = Apportionment.Units(parts, total);
        Assert.Equal(total, units.Sum());
        Assert.All(units, unit => Assert.InRange(unit, 0, total));
    });

    [Fact]
    public void EqualRemainders_TheLargerPartTakesAndGivesFirst()
    {
        Assert.Equal([3L, 101], Apportionment.Units([3.5, 100.5], 104));
        Assert.Equal([3L, 99], Apportionment.Units([3, 100], 102));
    }

    [Fact]
    public void NegativePart_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Apportionment.Units([-1, 2], 1));
}
