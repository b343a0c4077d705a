using Doughwright.App.Desk.Shelf;
using Doughwright.App.Text.Sides;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What becomes of a recipe by a step, in words: "sugar (dough) back to 9 %".</summary>
internal static class ChangeWords
{
    /// <summary>Changes that a button can hold.</summary>
    private const int Most = 2;

    /// <summary>A figure is not parted from its unit.</summary>
    private const char Gap = '\u00a0';

    private static readonly Aspect[] There = [Aspect.Part, Aspect.Line, Aspect.Step, Aspect.Photo, Aspect.Tool, Aspect.Own, Aspect.Without, Aspect.Swap, Aspect.Keeping, Aspect.Accepted];

    /// <summary>What has no short value of its own.</summary>
    private static readonly Aspect[] Long =
        [Aspect.PartOrder, Aspect.LineOrder, Aspect.StepOrder, Aspect.Words, Aspect.StepWords, Aspect.Variants, Aspect.Folds, Aspect.Order, Aspect.Measured, Aspect.Cue, Aspect.HomeOvenTraits];

    /// <summary>What a step back brings back.</summary>
    public static string Back(Stand now, Stand then, Voice voice) =>
        Told(now, then, "back", voice) is { Length: > 0 } told ? told : BackWords.Lines(now.Text, then.Text, voice);

    /// <summary>What is otherwise now; empty where a baker would see no difference.</summary>
    public static string Now(Stand before, Stand now, Voice voice) => Told(before, now, "now", voice);

    private static string Told(Stand from, Stand to, string way, Voice voice)
    {
        if (from.Formula is not { } first || to.Formula is not { } second)
        {
            return "";
        }

        var all = RecipeDifferences.Between(first, second);
        var hasLine = all.Any(one => one.Aspect == Aspect.Line);
        // What moves a figure is told before a title or a tool.
        var differences = all.Where(one => !Follows(one, hasLine)).OrderByDescending(one => Causes.CanMove(one.Aspect)).ToArray();
        var told = new SideWords(first.Recipe, second.Recipe, voice).Rows(differences.Take(Most)).Select(row => Say(row, way, voice));
        return voice.List(differences.Length > Most ? [.. told, voice.Say("family.more", ("count", differences.Length - Most))] : told);
    }

    /// <summary>A line that is typed as before has another share of the flour only because the flour changed; one that comes or goes does so in its step too.</summary>
    private static bool Follows(RecipeDifference one, bool hasLine) =>
        one is { First: LineAmount was, Second: LineAmount comes } ? was.Typed == comes.Typed : hasLine && one.Aspect == Aspect.Order;

    private static string Say(SideRow row, string way, Voice voice)
    {
        var (aspect, value) = (row.Difference.Aspect, row.Second.Under?.Replace(' ', Gap) ?? row.Second.Text);
        var kind = There.Contains(aspect)
            ? row.Difference switch { { Second: null } => "out", { First: null } => aspect == Aspect.Line ? "in-with" : "in", _ => "otherwise" }
            : Long.Contains(aspect) ? "otherwise" : "to";
        return voice.Say($"change.{way}.{kind}", ("what", Small(row.What)), ("value", value));
    }

    /// <summary>What it is about begins its row with a capital; here it stands within a sentence.</summary>
    private static string Small(string what)
    {
        var end = what.IndexOf(' ', StringComparison.Ordinal);
        return end < 0 ? Capital.Small(what) : Capital.Small(what[..end]) + what[end..];
    }
}

/// <summary>A text as it stands, with its quantities where it is understood.</summary>
internal sealed record Stand(string Text, Formula? Formula);
