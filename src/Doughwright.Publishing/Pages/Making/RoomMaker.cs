using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Pages.Rooms;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>The table of rooms in words.</summary>
internal sealed class RoomMaker(Rehearsal here, Both both)
{
    public RoomSection Of(RoomTable table)
    {
        // One head serves where the same lines keep the dough in every room; else each row names its own.
        var levers = table.Rows.Select(row => row.Kept).OfType<Lever>().ToArray();
        var alike = levers.Select(lever => string.Join('/', lever.Lines)).Distinct().Count() == 1;
        return new(
            Notes(table, levers.Length),
            levers.Length == 0 ? null : alike ? both.Say(levers[0].Lines.Count == 1 ? "page.rooms-lever-one" : "page.rooms-lever", ("names", Capital.Of(Names(levers[0])))) : both.Say("page.rooms-levers"),
            [.. table.Steps.Select(step => Capital.Of(StepName.Of(step, both.Voice)))],
            [.. table.Rows.Select(row => new RoomLine(
                both.DegreesInRow(row.Air),
                row.IsHere,
                levers.Length == 0 ? null : row.Kept is { } kept ? Kept(kept, alike) : both.Say("page.rooms-as-written"),
                [.. row.Times.Select(Time)]))]);
    }

    private string[] Notes(RoomTable table, int kept) =>
    [
        kept > 0 && table.Held is { } held ? both.Say("page.rooms-held", ("dough", both.Degrees(held))) : both.Say("page.rooms-follow"),
        .. kept > 0 && kept < table.Rows.Count ? new[] { both.Say("page.rooms-not-held") } : [],
        both.Say("page.rooms-range"),
    ];

    private string Names(Lever lever) => both.Voice.List(lever.Lines.Select(NameOf));

    private string NameOf(string line) =>
        here.Formula.FindComponent(line) is { } part ? Capital.Small(part.Name)
        : here.Formula.Components.SelectMany(component => component.Lines).FirstOrDefault(each => each.Id == line) is { } found ? Capital.Small(found.Name)
        : line;

    private string Kept(Lever lever, bool named)
    {
        var how = lever.Warmth is { } warmth ? both.DegreesInRow(warmth) : both.Say("page.rooms-ice", ("ice", both.Weight(lever.Ice!.Value)));
        return named ? how : both.Say("page.rooms-named", ("names", Names(lever)), ("how", how));
    }

    private (string, string?) Time(RoomTime time)
    {
        if (time.Time is not { } estimate)
        {
            return (both.Voice.Words[time.Never ? "never-here" : "not-known"], null);
        }

        var (low, high) = (Fives.Below(estimate.Low), estimate.High is { } end ? Fives.Above(end) : (Duration?)null);
        return (Show.DurationColumn(Fives.Near(estimate.Likely)), both.Voice.Range(low, high));
    }
}
