using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The small grammars of a step: its vessel, its folds, its oven, its way of mixing.</summary>
internal static class StepGrammar
{
    public const string None = "none";
    public const string Warmed = "warmed";
    public const string At = "at";
    public const string ByHand = "by hand";

    /// <summary>"steel bowl, 500 g", "glass bowl, 350 g, warmed", "steel tin, 500 g, 30 x 11 x 10 cm", "pot", "none"; or the name of a vessel of the kitchen.</summary>
    public static Vessel? Vessel(Phrase words, KitchenVessels there)
    {
        if (Named(words.Text, there) is { } known)
        {
            return known;
        }

        if (words.Text == None)
        {
            return Kitchens.Vessel.None;
        }

        var pieces = words.Split();
        var named = pieces[0].Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var material = named.Length == 2 ? EnumWords<VesselMaterial>.Find(named[0]) : null;
        var shape = named.Length is 1 or 2 ? EnumWords<VesselShape>.Find(named[^1]) : null;
        if (shape is null or VesselShape.None || (named.Length == 2 && material is null))
        {
            NoVessel(pieces[0]);
            return null;
        }

        var warmed = pieces.Count > 1 && pieces[^1].Text == Warmed;
        var said = pieces.Skip(1).SkipLast(warmed ? 1 : 0).ToArray();
        var size = said.FirstOrDefault(piece => VesselSizeText.IsMeant(piece.Text));
        said = [.. said.Where(piece => piece != size)];
        foreach (var more in said.Skip(1))
        {
            more.Fault(FormFaults.VesselNotUnderstood, ("materials", ""), ("shapes", ""));
        }

        return new(shape.Value, material, said.Length > 0 ? said[0].Mass(Limits.Vessel) : null, warmed)
        {
            Size = size is null ? null : SizeOf(size, shape.Value),
        };
    }

    public static void NoVessel(Phrase words) => words.Fault(
        FormFaults.VesselNotUnderstood,
        ("materials", string.Join(", ", EnumWords<VesselMaterial>.All)),
        ("shapes", string.Join(", ", EnumWords<VesselShape>.All.Where(word => word != None))));

    private static Vessel? Named(string words, KitchenVessels there)
    {
        const string AndWarmed = ", " + Warmed;
        var isWarmed = words.EndsWith(AndWarmed, StringComparison.Ordinal);
        return there.Named(isWarmed ? words[..^AndWarmed.Length] : words) is { } named ? named with { Warmed = isWarmed } : null;
    }

    private static VesselSize? SizeOf(Phrase words, VesselShape shape)
    {
        var size = VesselSizeText.Read(words.Text, shape);
        if (size is null)
        {
            words.Fault(FormFaults.SizeNotUnderstood);
        }

        return size;
    }

    /// <summary>"at 45 min", "at 45 min, 2 min by hand".</summary>
    public static Fold? Fold(Phrase words)
    {
        var pieces = words.Split();
        if (pieces.Count > 2 || pieces[0].After(At) is not { } after)
        {
            words.Fault(FormFaults.FoldNotUnderstood);
            return null;
        }

        var hands = pieces.Count == 2 ? (pieces[1].Before(ByHand) ?? pieces[1]).Duration(Limits.Hands) : Duration.Zero;
        return after.Duration(Limits.Hands) is { } time && hands is { } busy ? new(time, busy) : null;
    }

    /// <summary>"170 C fan", "375 F static", "190 C", "250 C static, 220 C after 10 min".</summary>
    public static OvenSetting? Oven(Phrase words)
    {
        var pieces = words.Split();
        if (pieces.Count == 1)
        {
            return Dial(words);
        }

        if (pieces.Count > 2)
        {
            words.Fault(FormFaults.DialNotUnderstood);
            return null;
        }

        var (dial, then) = (Dial(pieces[0]), OvenGrammar.Then(pieces[1]));
        return dial is not null && then is not null ? dial with { Then = then } : null;
    }

    private static OvenSetting? Dial(Phrase words)
    {
        foreach (var mode in Enum.GetValues<OvenMode>())
        {
            if (words.Before(EnumWords<OvenMode>.Of(mode)) is { } dial)
            {
                return dial.Temperature(Limits.Oven) is { } temperature ? new(temperature, mode) : null;
            }
        }

        return words.Temperature(Limits.Oven) is { } unsaid ? new(unsaid, null) : null;
    }

    /// <summary>"by hand", "machine" (or "by machine"), "food processor".</summary>
    public static MixingWay? Way(Phrase words) => words.Text == "by machine" ? MixingWay.Machine : words.Word<MixingWay>();
}
