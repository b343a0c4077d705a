using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>"after 20 min", "at 28 C", "at 2 times its volume", "doubled", "core at 93 C", "by its cue, about 20 min", "ripe", "ripe, about 13 h".</summary>
internal static class EndGrammar
{
    public const string After = "after";
    public const string At = "at";
    public const string CoreAt = "core at";
    public const string TimesItsVolume = "times its volume";
    public const string Doubled = "doubled";
    public const string ByItsCue = "by its cue";
    public const string About = "about";
    public const string Ripe = "ripe";

    public static StepEnd? Read(Phrase words)
    {
        if (words.Text == Doubled)
        {
            return new StepEnd.AtGrowth(2);
        }

        if (words.After(After) is { } time)
        {
            return time.Duration(Limits.Step) is { } duration ? new StepEnd.AfterTime(duration) : null;
        }

        if (words.After(CoreAt) is { } core)
        {
            return core.Temperature(Limits.Core) is { } temperature ? new StepEnd.AtCore(temperature) : null;
        }

        if (words.After(At) is { } reached)
        {
            return reached.Before(TimesItsVolume) is { } growth ? Growth(growth)
                : reached.Temperature(Limits.Matter) is { } temperature ? new StepEnd.AtTemperature(temperature) : null;
        }

        if (words.Text == Ripe)
        {
            return new StepEnd.WhenRipe(null);
        }

        if (words.Split() is [{ Text: ByItsCue or Ripe } way, var about] && about.After(About) is { } estimate)
        {
            return estimate.Duration(Limits.Step) is not { } duration ? null
                : way.Text == Ripe ? new StepEnd.WhenRipe(duration) : new StepEnd.ByCue(duration);
        }

        words.Fault(FormFaults.EndNotUnderstood);
        return null;
    }

    private static StepEnd.AtGrowth? Growth(Phrase words) => words.Number(Limits.Growth) is { } times ? new(times) : null;
}
