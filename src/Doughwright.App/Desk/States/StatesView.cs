using System.Globalization;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.States;

/// <summary>The page of a recipe's states, in finished words.</summary>
/// <param name="Facts">Standing, and when it was written last.</param>
/// <param name="Written">All states by day, the latest first.</param>
internal sealed record StatesView(string Facts, string Stamp, IReadOnlyList<KeptRowView> Kept, IReadOnlyList<WrittenDay> Written)
{
    /// <summary>Whether the text is understood as it is now, so that something can come of it.</summary>
    public bool IsUnderstood { get; private init; }

    public static StatesView Of(RecipeFile file, RecipeStates states, ShelfFolder shelf, StateDays days, Voice voice)
    {
        var standing = shelf.Book.Said.All(PaperSort.Recipe).TryGetValue(file.Name, out var said) && said.TryGetValue(Saying.Standing, out var word)
            ? voice.Words.Find($"states.standing.{word}")
            : null;
        var last = voice.Say("states.last-change", ("moment", days.DayAndTime(file.Paper.At)));
        return new(
            standing is null ? last : voice.Say("states.facts", ("standing", standing), ("last", last)),
            Text(states.Now),
            [.. states.Kept.Select(kept => KeptRowView.Of(kept, states, days, file.Name, voice))],
            [
                .. states.Written.GroupBy(state => days.DayOf(state.At)).Select(day => new WrittenDay(
                    days.Day(day.Key),
                    [.. day.Select(state => new WrittenRow(days.Time(state.At), state.Did, Text(state.Id), state.Id == states.Now, BesideNow(file.Name, state.Id, voice)))])),
            ])
        {
            IsUnderstood = file.Recipe is not null,
        };
    }

    public static string BesideNow(string recipe, long state, Voice voice) =>
        ShelfAddress.InMeasures($"/recipes/{Uri.EscapeDataString(recipe)}/sides?left={Text(state)}", voice);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A state that was kept.</summary>
/// <param name="IsNow">Whether the recipe is in it.</param>
/// <param name="Beside">Address at which it stands beside the recipe as it is now.</param>
internal sealed record KeptRowView(string Day, string Name, string Note, string? Published, string State, bool IsNow, string Beside)
{
    public static KeptRowView Of(KeptState kept, RecipeStates states, StateDays days, string recipe, Voice voice) => new(
        Capital.Of(voice.Say("states.kept", ("day", days.Day(kept.At)))),
        kept.Name,
        kept.Note,
        kept.Published ? voice.Words["states.published"] : null,
        kept.State.ToString(CultureInfo.InvariantCulture),
        kept.State == states.Now,
        StatesView.BesideNow(recipe, kept.State, voice));
}

/// <summary>What was written on one day.</summary>
internal sealed record WrittenDay(string Day, IReadOnlyList<WrittenRow> Rows);

/// <summary>One state that was written.</summary>
internal sealed record WrittenRow(string Time, string Did, string State, bool IsNow, string Beside);
