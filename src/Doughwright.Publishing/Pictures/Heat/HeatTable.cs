using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Heat;

/// <summary>The heat balance in figures. What is printed adds up: what gives and what takes come to the same, to the last digit.</summary>
internal static class HeatTable
{
    private const int MostDecimals = 2;

    public static FigureTable Of(HeatBalance balance, Rehearsal rehearsal, Voice voice)
    {
        var decimals = DecimalsOf(balance);
        var heats = Printed(balance, decimals);
        List<FigureRow> others = [], free = [];
        for (var index = 0; index < balance.Shares.Count; index++)
        {
            var share = balance.Shares[index];
            (share.IsFree ? free : others).Add(Row(share, heats[index], decimals, balance, rehearsal, voice));
        }

        var rest = Enumerable.Range(0, heats.Length).Where(index => !balance.Shares[index].IsFree).Sum(index => heats[index]);
        var names = balance.Shares.Where(share => share.IsFree).Select(share => HeatNames.Of(share, balance, rehearsal, voice)).ToList();
        var sum = new FigureRow(
            names.Count == 0 ? voice.Say("heat.together") : voice.Say("heat.without", ("names", voice.List(names.Select(Capital.Small)))),
            ["", "", "", Kilojoules.Signed(rest, decimals)],
            RowTone.Sum);
        return new(
            voice.Say("heat.caption", ("mixed", balance.Mixed)),
            [
                new(voice.Say("heat.head-goes-in")),
                new(voice.Say("heat.head-mass"), voice.Measures == MeasureSystem.Us ? "" : voice.Say("unit.grams")),
                new(voice.Say("heat.head-capacity"), voice.Say("unit.specific-heat")),
                new(voice.Say("heat.head-at"), voice.DegreeUnit.Trim('\u00a0')),
                new(voice.Say("heat.head-gives"), voice.Say("unit.kilojoules")),
            ],
            others,
            [sum, .. free]);
    }

    /// <summary>Four digits are enough: a big batch is told in whole kilojoules.</summary>
    private static int DecimalsOf(HeatBalance balance) => balance.Shares.Select(share => Math.Abs(share.Kilojoules)).DefaultIfEmpty().Max() switch
    {
        >= 1000 => 0,
        >= 100 => 1,
        _ => MostDecimals,
    };

    /// <summary>Givers and takers are each shared out to the same total.</summary>
    private static double[] Printed(HeatBalance balance, int decimals)
    {
        var given = Show.ShareOut([.. balance.Shares.Select(share => Math.Max(0, share.Kilojoules))], decimals);
        var taken = Show.ShareOut([.. balance.Shares.Select(share => Math.Max(0, -share.Kilojoules))], decimals);
        return [.. given.Zip(taken, (gives, takes) => gives - takes)];
    }

    private static FigureRow Row(HeatShare share, double heat, int decimals, HeatBalance balance, Rehearsal rehearsal, Voice voice)
    {
        var name = HeatNames.Of(share, balance, rehearsal, voice);
        var perGram = share is { KilojoulesPerKelvin: { } capacity, Mass: { } mass } && mass > Mass.Zero ? capacity * 1000 / mass.Grams : (double?)null;
        return new(
            share.IsFree ? voice.Say("heat.to-close", ("name", name)) : name,
            [
                share.Mass is { } weighed ? MassCell.Of(weighed, voice) : "",
                perGram is { } specific ? Show.Number(specific, 2) : "",
                share.GoesIn is { } goesIn ? voice.Degrees(goesIn) : "",
                Kilojoules.Signed(heat, decimals),
            ],
            share.IsFree ? RowTone.Free : RowTone.Plain);
    }
}
