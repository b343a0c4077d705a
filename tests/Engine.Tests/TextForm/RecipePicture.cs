using System.Collections;
using System.Reflection;
using System.Text;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>
/// Everything a recipe says, as text, without the positions: two recipes are equal when their pictures are. Independent of the writer.
/// </summary>
internal static class RecipePicture
{
    public static string Of(object? value)
    {
        var text = new StringBuilder();
        Draw(text, value);
        return text.ToString();
    }

    private static void Draw(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                text.Append("null");
                break;
            case Position:
                break;
            case string or Enum or int or bool:
                text.Append('<').Append(value).Append('>');
                break;
            case double number:
                text.Append(number.ToString("R", System.Globalization.CultureInfo.InvariantCulture));
                break;
            case AirProfile air:
                Draw(text, air.Knots);
                break;
            case IEnumerable items:
                text.Append('[');
                foreach (var item in items)
                {
                    Draw(text, item);
                    text.Append(';');
                }

                text.Append(']');
                break;
            default:
                DrawMembers(text, value);
                break;
        }
    }

    private static void DrawMembers(StringBuilder text, object value)
    {
        var type = value.GetType();
        if (type.Namespace == "Doughwright.Engine.Quantities")
        {
            text.Append(value);
            return;
        }

        text.Append(type.Name).Append('{');
        // What cannot be set is worked out from what can.
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.CanWrite))
        {
            text.Append(property.Name).Append('=');
            Draw(text, property.GetValue(value));
            text.Append(',');
        }

        foreach (var field in type.GetFields(BindingFlags.Public | BindingFlags.Instance))
        {
            Draw(text, field.GetValue(value));
            text.Append(',');
        }

        text.Append('}');
    }
}
