using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The small grammars of an oven: how it runs, what stands in it, and what is done to it during a bake.</summary>
internal static class OvenGrammar
{
    public const string After = " after ";
    public const string None = "none";
    public const string Hotter = "hotter";
    public const string Cooler = "cooler";
    public const string AsItsDial = "as its dial";
    public const string OffAfter = "off after";

    /// <summary>Degrees Fahrenheit in a kelvin. A difference has no 32 in it.</summary>
    private const double FahrenheitPerKelvin = 1.8;

    /// <summary>"10 C hotter", "15 F cooler", "as its dial". The word says the sign, and never a minus.</summary>
    public static TemperatureDelta? Runs(Phrase words)
    {
        if (words.Text == AsItsDial)
        {
            return TemperatureDelta.Zero;
        }

        var hotter = words.Before(Hotter);
        if ((hotter ?? words.Before(Cooler)) is not { } said || said.Text.StartsWith('-'))
        {
            words.Fault(FormFaults.OvenRunsNotUnderstood);
            return null;
        }

        if (said.AnyTemperature() is not { } read)
        {
            return null;
        }

        var kelvins = Kelvins(said.Text, read);
        var delta = TemperatureDelta.FromKelvins(hotter is null ? -kelvins : kelvins);
        if (!Limits.OffDial.Holds(delta))
        {
            said.Log.Wrong(
                Limits.OffDial.Kind, said.Place, said.Position, ("value", delta), ("low", Limits.OffDial.Low), ("high", Limits.OffDial.High), ("typed", said.Text));
            return null;
        }

        return delta;
    }

    /// <summary>How an oven runs, as it is read back; null where nobody measured it.</summary>
    public static string? RunsText(TemperatureDelta? measured)
    {
        if (measured is not { } delta || delta == TemperatureDelta.Zero)
        {
            return measured is null ? null : AsItsDial;
        }

        var kelvins = Math.Abs(delta.Kelvins);
        var text = new[] { (kelvins, "C"), (kelvins * FahrenheitPerKelvin, "F") }
            .Select(unit => $"{NumberText.Exact(Math.Round(unit.Item1, 3))} {unit.Item2}")
            .FirstOrDefault(written => QuantityText.TryTemperature(written).Value is { } read && Kelvins(written, read) == kelvins)
            ?? $"{NumberText.Exact(kelvins)} C";
        return $"{text} {(delta > TemperatureDelta.Zero ? Hotter : Cooler)}";
    }

    /// <summary>"220 C after 10 min".</summary>
    public static DialChange? Then(Phrase words)
    {
        if (words.Around(After) is not var (dial, after))
        {
            words.Fault(FormFaults.DialNotUnderstood);
            return null;
        }

        var (set, time) = (dial.Temperature(Limits.Oven), after.Duration(Limits.WithinBake));
        return set is { } known && time is { } moment ? new(known, moment) : null;
    }

    /// <summary>"stone, 15 mm", "steel", "none".</summary>
    public static Hearth? Hearth(Phrase words)
    {
        if (words.Text == None)
        {
            return null;
        }

        var pieces = words.Split();
        if (pieces.Count > 2 || EnumWords<HearthMaterial>.Find(pieces[0].Text) is not { } material)
        {
            words.Fault(FormFaults.HearthNotUnderstood, ("known", string.Join(", ", EnumWords<HearthMaterial>.All)));
            return null;
        }

        if (pieces.Count == 1)
        {
            return new(material, null);
        }

        return pieces[1].Length(Limits.Hearth) is { } thick && Limits.Hearth.Holds(thick) ? new(material, thick) : null;
    }

    public static string HearthText(Hearth hearth) =>
        EnumWords<HearthMaterial>.Of(hearth.Material) + (hearth.Thick is { } thick ? ", " + ExactText.OfDepth(thick) : "");

    /// <summary>"10 min", "none".</summary>
    public static Duration? Steam(Phrase words) => words.Text == None ? null : words.Duration(Limits.WithinBake);

    public static string? SteamText(Duration? steam, bool everything) => steam is { } time ? ExactText.Of(time) : everything ? None : null;

    /// <summary>"off after 25 min", "none".</summary>
    public static Duration? Lid(Phrase words)
    {
        if (words.Text == None)
        {
            return null;
        }

        if (words.After(OffAfter) is { } time)
        {
            return time.Duration(Limits.WithinBake);
        }

        words.Fault(FormFaults.LidNotUnderstood);
        return null;
    }

    public static string? LidText(Duration? off, bool everything) => off is { } time ? $"{OffAfter} {ExactText.Of(time)}" : everything ? None : null;

    private static double Kelvins(string typed, Temperature read) => typed.EndsWith('F') || typed.EndsWith('f') ? read.Fahrenheit / FahrenheitPerKelvin : read.Celsius;
}
