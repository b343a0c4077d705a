using Doughwright.App.Desk.Compare;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Compare;

/// <summary>Causes in words come from computed parts, and add up.</summary>
public class BecauseTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    private static readonly Because Because = new(Voice, null);

    private static Difference Minutes(double first, params (Mover Mover, Direction Direction, double By)[] parts) => new()
    {
        Figure = new(FigureKind.Minutes, "bulk"),
        First = first,
        Second = first + parts.Sum(part => part.By),
        Parts = [.. parts.Select(part => new Difference.Part([new(part.Mover, part.Direction)], part.By))],
    };

    private static string Told(Difference difference)
    {
        var measure = Measure.Of(difference.Figure.Kind, MeasureSystem.Metric);
        return Because.Of(difference, measure, measure.Steps(difference.First!.Value, difference.Second!.Value));
    }

    /// <summary>Which ways a mover can go: a warmth has three, what only is or is not the same has one.</summary>
    [Fact]
    public void EveryMove_HasWords()
    {
        Mover[] plain = [Mover.Bowls, Mover.Variant, Mover.Mixing, Mover.Weighed, Mover.Equipment];
        Mover[] ordered = [Mover.Height, Mover.Tap, Mover.Fridge, Mover.Oven];
        var moves = Enum.GetValues<Mover>().SelectMany(mover => Enum.GetValues<Direction>()
            .Where(direction => plain.Contains(mover) ? direction == Direction.Other : !ordered.Contains(mover) || direction != Direction.Other)
            .Select(direction => new Move(mover, direction)));
        Assert.Equal([], moves.Select(Because.KeyOf).Where(key => Words.Shipped.Find(key) is null));
        Assert.Equal([], Enum.GetNames<Unknown>().Select(name => $"compare.unknown.{Voice.Kebab(name)}").Where(key => Words.Shipped.Find(key) is null));
    }

    [Fact]
    public void SeveralParts_StandWithTheirFigures() =>
        Assert.Equal("Colder room +13, thinner air −9.", Told(Minutes(105, (Mover.Room, Direction.Less, 13.2), (Mover.Height, Direction.More, -9.1))));

    [Fact]
    public void OnePart_IsTheWholeDifference_AndNeedsNoFigure() => Assert.Equal("Thinner air.", Told(Minutes(105, (Mover.Height, Direction.More, -9))));

    [Fact]
    public void PartTooSmallToShow_IsLeftOut() =>
        Assert.Equal("Colder room.", Told(Minutes(105, (Mover.Room, Direction.Less, 13), (Mover.Tap, Direction.Less, 0.2))));

    [Fact]
    public void PartsThatCancel_AreStillTold() =>
        Assert.Equal("Colder room +9, thinner air −9.", Told(Minutes(105, (Mover.Room, Direction.Less, 9), (Mover.Height, Direction.More, -9))));

    [Fact]
    public void LongParts_AreToldInHoursAndMinutes() =>
        Assert.Equal("Colder room +1\u00a0h 43\u00a0min, thinner air −2\u00a0min.", Told(Minutes(105, (Mover.Room, Direction.Less, 103), (Mover.Height, Direction.More, -2))));

    /// <summary>Parts of every size: whole steps that add up to the difference as shown, none far from what it is.</summary>
    [Theory]
    [InlineData(FigureKind.Minutes, MeasureSystem.Metric, 1)]
    [InlineData(FigureKind.EndTemperature, MeasureSystem.Metric, 10)]
    [InlineData(FigureKind.EndTemperature, MeasureSystem.Us, 1.8)]
    [InlineData(FigureKind.GoesIn, MeasureSystem.Metric, 1)]
    public void SharedOutParts_AddUpToWhatIsShown_AndLieNear(FigureKind kind, MeasureSystem system, double perUnit)
    {
        var measure = Measure.Of(kind, system);
        for (var first = 20.0; first < 24; first += 0.37)
        {
            for (var part = -6.0; part < 6; part += 0.23)
            {
                double[] parts = [part, 1.49, -2.5 * part, 0.04];
                var steps = measure.Steps(first, first + parts.Sum());
                var shown = measure.ShareOut(parts, steps);
                Assert.Equal(steps, shown.Sum());
                Assert.All(shown.Zip(parts), pair => Assert.InRange(pair.First - (pair.Second * perUnit), -1.5, 1.5));
            }
        }
    }
}
