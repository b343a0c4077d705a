using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Text;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Readying;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Readying;

/// <summary>The recipe as written and the ways that do it, column by column.</summary>
/// <param name="Heads">The first is that of the names.</param>
public sealed record ReadyTable(IReadOnlyList<string> Heads, IReadOnlyList<ReadyRow> Rows, IReadOnlyList<ReadyRow> Foot)
{
    internal static ReadyTable Of(ReadyAnswer answer, ReadyWords words, Voice voice) => new Maker(answer, words, voice).Make();

    private sealed class Maker(ReadyAnswer answer, ReadyWords words, Voice voice)
    {
        /// <summary>With their place in the JSON of the command line.</summary>
        private readonly (ReadyWay Way, string Of)[] ways =
            [.. answer.Ways.Select((way, index) => (way, FormattableString.Invariant($"ways.{index}"))).Where(each => each.way.Obstacle is null)];

        private Rehearsal Written => answer.AsWritten;

        public ReadyTable Make() => new(
            [voice.Words["readying.head"], voice.Words["readying.as-written"], .. ways.Select(each => voice.Member(each.Way.Lever))],
            [.. Yeasts(), .. Poured(), .. DoughRow(), .. Moved()],
            [Row(voice.Words["readying.total"], Total(Written, ""), each => Total(each.Way.Rehearsal!, each.Of + ".")), ReadyAt()]);

        private IEnumerable<ReadyRow> Yeasts() => (ways.FirstOrDefault(each => each.Way.Doses.Count > 0).Way?.Doses ?? []).Select((dose, index) => Row(
            Capital.Of(dose.Name),
            new Fig(voice.Text(dose.Was), dose.Was.Grams),
            each => each.Way.Doses.Count > index ? new Fig(voice.Text(each.Way.Doses[index].Now), each.Way.Doses[index].Now.Grams, $"{each.Of}.doses.{index}.grams") : null));

        private IEnumerable<ReadyRow> Poured() => (ways.FirstOrDefault(each => each.Way.Water is not null).Way?.Water?.Lines ?? []).Select(line => Row(
            Capital.Of(line.Name),
            line.Was is { } was ? new Fig(voice.Text(was), was.Celsius) : null,
            each => each.Way.Water is { } water ? new Fig(voice.Text(water.Now), water.Now.Celsius, $"{each.Of}.water.celsius") : null));

        private IEnumerable<ReadyRow> DoughRow() => ways.FirstOrDefault(each => each.Way.Water?.Dough is not null).Way?.Water is { } any
            ? [Row(
                voice.Words["readying.dough"],
                MixedOf(Written, any.Component, null),
                each => each.Way.Water is null ? null : MixedOf(each.Way.Rehearsal!, any.Component, $"{each.Of}.water.doughCelsius"))]
            : [];

        private Fig? MixedOf(Rehearsal run, string component, string? of) =>
            run.Components.FirstOrDefault(part => part.Id == component)?.Mixed?.Likely is { } mixed ? new Fig(voice.Text(mixed), mixed.Celsius, of) : null;

        private IEnumerable<ReadyRow> Moved() => Written.Steps
            .Select(step => ways.SelectMany(each => each.Way.Moves).FirstOrDefault(move => move.Step == step.Id))
            .OfType<ReadyMove>()
            .Select(move => Row(words.NameOf(move), Column(move.Was, null), each => MovedIn(each.Way, each.Of, move.Step)));

        private static Fig? MovedIn(ReadyWay way, string of, string step)
        {
            var index = way.Moves.ToList().FindIndex(move => move.Step == step);
            return index < 0 ? null : Column(way.Moves[index].Now, FormattableString.Invariant($"{of}.moves.{index}.minutes"));
        }

        private static Fig? Total(Rehearsal run, string of) => run.Total is { } total ? Column(total.Likely, of + "totalMinutes") : null;

        private ReadyRow ReadyAt() => Row(voice.Words["readying.ready"], At(Written), each => At(each.Way.Rehearsal!));

        private Fig? At(Rehearsal run) => run.Total is { } total ? new Fig(words.Clock(total.Likely)) : null;

        private static Fig Column(Duration time, string? of) => new(Show.DurationColumn(time), time.Minutes, of);

        /// <summary>What a way leaves as written is as written; what reads otherwise is set off.</summary>
        private ReadyRow Row(string name, Fig? written, Func<(ReadyWay Way, string Of), Fig?> of) => new(
            name,
            [
                written ?? new Fig(FigureTable.Nothing),
                .. ways.Select(each => of(each) is { } figure && figure.Text != written?.Text ? figure with { Moved = true } : of(each) ?? written ?? new Fig(FigureTable.Nothing)),
            ]);
    }
}

/// <summary>One row: as written, then each way.</summary>
public sealed record ReadyRow(string Name, IReadOnlyList<Fig> Cells);
