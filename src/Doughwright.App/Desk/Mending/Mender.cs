using System.Globalization;
using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Mending;

/// <summary>Carries out what a form asks: the changed text is written over the one that was shown, or nothing is.</summary>
/// <param name="desk">With the recipe open as it was shown.</param>
internal sealed class Mender(RecipeDesk desk, ShelfFolder shelf, Faults faults)
{
    /// <summary>What comes of a form: a text, and what was done in words.</summary>
    private sealed record Outcome(string Text, string Verb);

    private Voice Voice => faults.Voice;

    private RecipeFile File => desk.File!;

    /// <summary>The state that the recipe is in now; null with a fault when nothing was written.</summary>
    public string? Carry(MendForm asked)
    {
        if (!File.IsWhole || StateId.OfText(File.Text) != asked.State)
        {
            faults.Add("mend-changed", ("file", File.Name));
            return null;
        }

        if (asked.Back.Length > 0)
        {
            return Written(() => Back(asked.Back));
        }

        return Outcomes(asked) is { } outcome && CanStand(outcome)
            ? Written(() => shelf.RecipeTexts.Write(File.Name, File.Paper.State, outcome.Text, outcome.Verb))
            : null;
    }

    private string? Written(Func<WriteAnswer?> write)
    {
        try
        {
            switch (write())
            {
                case WriteAnswer.Written written:
                    return written.State.ToString(CultureInfo.InvariantCulture);
                case WriteAnswer.Meanwhile or WriteAnswer.NoPaper:
                    faults.Add("mend-changed", ("file", File.Name));
                    return null;
                default:
                    faults.Add("mend-unknown");
                    return null;
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("mend-not-written", ("folder", shelf.RecipeTexts.Path), ("reason", problem.Message));
            return null;
        }
    }

    private Outcome? Outcomes(MendForm asked) => asked switch
    {
        { Do.Length: > 0 } => WayOut(asked.Do),
        { Accept.Length: > 0 } => Accepted(asked.Accept, asked.Reason),
        { Stop.Length: > 0 } => Stopped(asked.Stop),
        _ => Unknown(),
    };

    private Outcome? WayOut(string id)
    {
        var offers = desk.State?.Offers ?? Offers.Of(File.Findings, null);
        return offers.All.FirstOrDefault(offer => offer.Id == id) is { } remedy
            ? new(remedy.CarryOut(File.Text), RemedyWords.Verb(remedy, Voice))
            : Unknown();
    }

    private Outcome? Accepted(string id, string reason)
    {
        if (desk.State is not { } state || !state.Acceptable.Contains(id) || state.Findings.FirstOrDefault(finding => finding.Id == id) is not { } finding)
        {
            return Unknown();
        }

        return AcceptedText.With(File.Text, finding, reason, faults) is { } text ? new(text, AcceptedText.Did(finding, Voice)) : null;
    }

    private Outcome? Stopped(string id) => desk.State is { } state && state.Recipe.Accepted.FirstOrDefault(one => one.FindingId == id) is { } accepted
        ? new(AcceptedText.Without(File.Text, id), AcceptedText.DidWithout(accepted, Voice))
        : Unknown();

    /// <summary>Only the state that came of a change leads back to the one before it, and that one forward again.</summary>
    private WriteAnswer? Back(string stamp) => stamp != WrittenView.StampOf(File.Paper) ? null
        : File.Paper.Redo is null ? shelf.RecipeTexts.Undo(File.Name, File.Paper.State)
        : shelf.RecipeTexts.Redo(File.Name, File.Paper.State);

    private Outcome? Unknown()
    {
        faults.Add("mend-unknown");
        return null;
    }

    /// <summary>What was understood stays so, and what can be read from the shelf does.</summary>
    private bool CanStand(Outcome outcome)
    {
        if (Encoding.UTF8.GetByteCount(outcome.Text) > TextFolder.LargestText)
        {
            faults.Add("mend-too-large", ("most", TextFolder.LargestText));
        }
        else if (File.Recipe is not null && RecipeText.Read(outcome.Text) is not { Understood: true, Recipe: not null })
        {
            faults.Add("mend-not-carried", ("verb", outcome.Verb));
        }

        return !faults.Any;
    }
}
