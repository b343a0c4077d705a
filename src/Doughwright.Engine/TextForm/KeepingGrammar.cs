using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>"in a bag at room temperature, 2 d": how, and as the last piece how long; or only how: "best on the day".</summary>
internal static class KeepingGrammar
{
    public const string Comma = ", ";

    public static KeepingAdvice? Read(Phrase words)
    {
        var last = words.Split()[^1];
        var begins = last.Position.Column - words.Position.Column;
        if (last.Text.Length == 0 || (begins == 0 && char.IsAsciiDigit(last.Text[0])))
        {
            words.Fault(FormFaults.KeepingNotUnderstood);
            return null;
        }

        // Only a time begins with a digit here: what cannot be read as one is told, not taken for words.
        if (!char.IsAsciiDigit(last.Text[0]))
        {
            return new(words.Text, null, words.Position);
        }

        var how = words.Text[..begins].TrimEnd().TrimEnd(',').TrimEnd();
        return last.Duration(Limits.Keeping) is { } time ? new(how, time, words.Position) : null;
    }

    public static string Write(KeepingAdvice keeping) => keeping.Words + (keeping.For is { } time ? Comma + ExactText.Of(time) : "");
}
