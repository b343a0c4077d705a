using System.Globalization;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.States;

/// <summary>What readers have of a recipe: states that are frozen, and what is put right afterwards with the places it must go to.</summary>
internal sealed class Published(string recipe, ShelfFolder shelf, StateDays days, Voice voice)
{
    public const int LongestCorrection = 400;

    public const int LongestPlace = 120;

    private readonly IReadOnlyList<KeptState> states = [.. shelf.Book.Kept.All(PaperSort.Recipe, recipe).Where(kept => kept.Published)];

    /// <summary>Published states that a correction can be of, the latest first.</summary>
    public IReadOnlyList<(string Value, string Name)> States => [.. states.Select(kept => (Text(kept.Id), NameOf(kept.Id)))];

    public IReadOnlyList<CorrectionView> Corrections() =>
    [
        .. shelf.Book.Corrections.All(PaperSort.Recipe, recipe).Select(correction => new CorrectionView(
            Text(correction.Id),
            correction.Text,
            voice.Say("corrections.where", ("place", correction.Place), ("state", NameOf(correction.Kept)), ("day", days.Day(correction.At))),
            correction.Made is { } made ? voice.Say("corrections.made", ("day", days.Day(made))) : null)),
    ];

    public bool Add(long? kept, string text, string place, Faults faults)
    {
        if (text.Length == 0 || place.Length == 0)
        {
            faults.Add("correction-empty");
        }

        if (text.Length > LongestCorrection || place.Length > LongestPlace)
        {
            faults.Add("correction-long", ("most", LongestCorrection), ("place", LongestPlace));
        }

        if (!faults.Any && (states.All(state => state.Id != kept) || !shelf.Book.Corrections.Add(kept!.Value, text, place)))
        {
            faults.Add("correction-unknown");
        }

        return !faults.Any;
    }

    public bool Make(long? id, Faults faults)
    {
        if (id is { } known && shelf.Book.Corrections.All(PaperSort.Recipe, recipe).Any(correction => correction.Id == known) && shelf.Book.Corrections.Make(known))
        {
            return true;
        }

        faults.Add("correction-unknown");
        return false;
    }

    private string NameOf(long id) => states.FirstOrDefault(kept => kept.Id == id) is { } known
        ? known.Name.Length > 0 ? voice.Say("states.kept-named", ("day", days.Day(known.At)), ("name", known.Name)) : voice.Say("states.kept", ("day", days.Day(known.At)))
        : voice.Words["not-known"];

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A correction, in finished words.</summary>
/// <param name="Made">When it was made at its place; null as long as it waits.</param>
internal sealed record CorrectionView(string Id, string Text, string Where, string? Made);
