using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>A mass in a column: grams without their unit, which stands in the head; ounces and pounds with theirs, because they are mixed.</summary>
internal static class MassCell
{
    public static string Of(Mass mass, Voice voice)
    {
        var text = voice.Text(mass);
        return voice.Measures == MeasureSystem.Us ? text : text[..text.IndexOf('\u00a0')];
    }
}
