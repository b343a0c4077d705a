using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>One thing that was measured of a step, or of how it was seen.</summary>
public enum MeasuredSaid
{
    Time,
    Temperature,

    /// <summary>The day.</summary>
    On,

    /// <summary>The room it was seen in, where that was another than the home's.</summary>
    Air,

    /// <summary>How often it was seen.</summary>
    Times,
}

/// <summary>Changes of what the author measured in a step, one thing at a time.</summary>
public static class MeasuredEdits
{
    /// <summary>What is said of one thing, as a text writes it; empty where nothing is.</summary>
    public static string Said(Step step, MeasuredSaid said) => step.Measured is not { } measured ? "" : said switch
    {
        MeasuredSaid.Time => measured.Time is { } time ? ExactText.Of(time) : "",
        MeasuredSaid.Temperature => measured.Temperature is { } temperature ? ExactText.Of(temperature) : "",
        MeasuredSaid.On => measured.On ?? "",
        MeasuredSaid.Air => measured.Air is { } air ? ExactText.Of(air) : "",
        _ => measured.TimesSeen > 1 ? NumberText.Exact(measured.TimesSeen) : "",
    };

    /// <summary>Says something else of one thing; nothing typed takes it out.</summary>
    /// <param name="unit">What a bare temperature is in; empty where that must be said.</param>
    public static EditAnswer Say(Recipe recipe, string step, MeasuredSaid said, string typed, string unit = "C")
    {
        if (recipe.FindStep(step) is not { } found)
        {
            return EditAnswer.Refuse("edit-step-gone", Places.OfStep(step), ("step", step));
        }

        var words = TypedLine.Tidy(typed);
        var now = Enum.GetValues<MeasuredSaid>().ToDictionary(one => one, one => one != said ? Said(found, one)
            : one is MeasuredSaid.Temperature or MeasuredSaid.Air ? TypedLine.WithUnit(words, unit) : words);
        var seen = string.Join(MeasuredGrammar.And, new[] { now[MeasuredSaid.Time], now[MeasuredSaid.Temperature] }.Where(one => one.Length > 0));
        if (seen.Length == 0 && words.Length > 0)
        {
            return EditAnswer.Refuse("edit-measured-nothing", Places.OfStep(step), ("step", found.Name));
        }

        // Once nothing is measured, it was seen on no day and in no room.
        var all = seen.Length == 0 ? "" : seen
            + (now[MeasuredSaid.On].Length > 0 ? MeasuredGrammar.On + now[MeasuredSaid.On] : "")
            + (now[MeasuredSaid.Air].Length > 0 ? $"{MeasuredGrammar.Comma}{MeasuredGrammar.InARoomOf} {now[MeasuredSaid.Air]}" : "")
            + (now[MeasuredSaid.Times].Length > 0 ? $"{MeasuredGrammar.Comma}{MeasuredGrammar.Seen} {now[MeasuredSaid.Times]} {MeasuredGrammar.Times}" : "");
        return StepEdits.Say(recipe, step, StepKeys.Measured, all);
    }
}
