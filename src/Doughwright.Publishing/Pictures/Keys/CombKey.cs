using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Keys;

/// <summary>A small comb for the key of a strip; the words beside it say what it means.</summary>
internal static class CombKey
{
    public static string Draw()
    {
        var svg = new Svg();
        Comb.Draw(svg, 2, 28, 54, (place, depth) => (place, 2 + depth));
        return $"<svg class=\"strip keycomb\" viewBox=\"0 0 56 18\" aria-hidden=\"true\">{svg}</svg>";
    }
}
