using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Keys;

/// <summary>The scale of warmth: chips from cold to hot, the temperatures of both ends beside them.</summary>
/// <param name="Chips">Classes of the chips, the coldest first.</param>
internal sealed record WarmthKey(string Coldest, string Hottest, IReadOnlyList<string> Chips)
{
    /// <summary>Denser where dough lives.</summary>
    private static readonly double[] Celsius = [4, 10, 17, 20, 24, 28, 32, 40, 50, 64, 80, 96, 130, 180, 220];

    public static WarmthKey Of(Voice voice) => new(
        voice.Text(Temperature.FromCelsius(Celsius[0]), "asked"),
        voice.Text(Temperature.FromCelsius(Celsius[^1]), "asked"),
        [.. Celsius.Select(celsius => Warmth.Class(Temperature.FromCelsius(celsius)))]);
}
