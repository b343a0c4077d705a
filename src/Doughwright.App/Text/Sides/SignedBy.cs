using Doughwright.Engine.Quantities;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text.Sides;

/// <summary>Differences of figures with their signs: what stands in a row is what is shown of one less what is shown of the other.</summary>
internal static class SignedBy
{
    public static string Of(SideNumber first, SideNumber second, Voice voice) => first.Unit switch
    {
        SideUnit.Percent => Points(first.Value, second.Value, voice),
        SideUnit.Grams => Grams(first.Value, second.Value, voice),
        SideUnit.Celsius => Degrees(first.Value, second.Value, voice),
        SideUnit.Minutes => Signed(second.Value - first.Value, size => Show.Duration(Duration.FromMinutes(size)), voice),
        SideUnit.Millimetres => Signed(second.Value - first.Value, size => Show.Depth(Length.FromMillimetres(size), voice.Measures), voice),
        SideUnit.Metres => Signed(second.Value - first.Value, size => Show.Altitude(Length.FromMetres(size), voice.Measures), voice),
        SideUnit.Count => Signed(second.Value - first.Value, size => Show.Number(size, 0), voice),
        _ => Signed(second.Value - first.Value, size => voice.Text(size), voice),
    };

    /// <summary>In points of percent: "+2.5".</summary>
    public static string Points(double first, double second, Voice voice)
    {
        var tenths = Tenths(second) - Tenths(first);
        return tenths == 0 ? Small(second - first, voice) : Signed(tenths / 10, size => Show.Number(size, 1), voice);
    }

    public static string Grams(double first, double second, Voice voice) =>
        Signed(second - first, size => Show.Mass(Mass.FromGrams(size), voice.Measures), voice);

    public static string Degrees(double first, double second, Voice voice)
    {
        var tenths = Tenths(second) - Tenths(first);
        return tenths == 0 ? Small(second - first, voice) : Signed(tenths / 10, size => Show.Difference(TemperatureDelta.FromKelvins(size), voice.Measures), voice);
    }

    private static string Signed(double by, Func<double, string> say, Voice voice) =>
        voice.Say(by < 0 ? "sides.minus" : "sides.plus", ("size", say(Math.Abs(by))));

    private static string Small(double by, Voice voice) => voice.Words[by == 0 ? "sides.same" : by < 0 ? "sides.hardly-less" : "sides.hardly-more"];

    private static double Tenths(double value) => Math.Round(10 * value, MidpointRounding.AwayFromZero);
}
