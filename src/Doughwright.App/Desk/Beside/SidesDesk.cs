using System.Globalization;
using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.States;
using Doughwright.App.Text.Sides;
using Doughwright.Engine.Sides;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Beside;

/// <summary>What an address asks to stand side by side, worked out, and what a form takes over.</summary>
internal sealed class SidesDesk
{
    private readonly RecipeFile file;
    private readonly RecipeStates states;
    private readonly ComparedTexts? compared;
    private readonly Voice voice;
    private readonly string key = "";

    /// <summary>Up to so many changes are tried one by one without being asked for. Measured at some 15 ms each on two cores that were busy with other work.</summary>
    private const int TriedUnasked = 20;

    /// <param name="because">Whether what moved the figures is asked for, however long it takes.</param>
    public SidesDesk(RecipeFile file, RecipeStates states, SideAsked left, SideAsked right, KitchenChoice kitchen, bool because, ShelfFolder shelf, Voice voice)
    {
        (this.file, this.states, this.voice, Left, Right) = (file, states, voice, left, right);
        if (left.Recipe is { } first && right.Recipe is { } second)
        {
            key = string.Join('\n', left.Name, right.Name, RecipeText.Write(first), RecipeText.Write(second), kitchen.Kitchen is { } there ? KitchenText.Write(there) : "");
            compared = ComparedTexts.Of((left.Name, first), (right.Name, second), kitchen.Kitchen, Earlier);
            Trials = Causes.Rehearsals(compared.Differences);
            IsAsked = because && Trials > TriedUnasked;
            View = SidesView.Of(compared, Trials is > 0 and <= TriedUnasked ? compared.Why() : null, voice);
        }

        LeftChoices = SideAsked.Choices(left, file, states, shelf, voice);
        RightChoices = SideAsked.Choices(right, file, states, shelf, voice);
        KitchenChoices = KitchenChoice.All(kitchen, shelf, voice);
        CommandLine = kitchen.CommandLine(left.File, right.File, IsAsked || View is { HasCauses: true }, shelf);
    }

    public SideAsked Left { get; }

    public SideAsked Right { get; }

    /// <summary>Null when a text of the two was not understood.</summary>
    public SidesView? View { get; }

    public IReadOnlyList<SideChoice> LeftChoices { get; }

    public IReadOnlyList<SideChoice> RightChoices { get; }

    public IReadOnlyList<SideChoice> KitchenChoices { get; }

    public string CommandLine { get; }

    /// <summary>Changes that can be tried one by one.</summary>
    public int Trials { get; }

    /// <summary>Whether it is asked what moved the figures, and takes so long that one wants to see how far it is.</summary>
    public bool IsAsked { get; }

    /// <summary>Offers to work it out; null where there is nothing to ask for.</summary>
    public string? AskBecause => IsAsked || Trials <= TriedUnasked ? null : voice.Say("sides.because-ask", ("count", Trials));

    public string Trying => voice.Say("sides.because-trying", ("count", Trials));

    /// <summary>The same with what moved the figures, finished or on its way.</summary>
    public Task<SidesView> Reasoned(LatestAnswers<SidesView> answers) =>
        answers.For(string.Join('\n', key, voice.Measures), () => SidesView.Of(compared!, compared!.Why(), voice));

    /// <summary>The states that are shown, of this recipe.</summary>
    public IReadOnlyCollection<long> Shown => [.. new[] { Left.State, Right.State }.OfType<long>().Distinct()];

    /// <summary>The state on the left that can be brought back whole; null where it is none, or the recipe is in it.</summary>
    public long? Whole => CanTake && Left.State is { } state && state != states.Now ? state : null;

    public string BringWhole => voice.Say("sides.bring-whole", ("state", Left.Name));

    public string Stamp => states.Now.ToString(CultureInfo.InvariantCulture);

    public string Title => voice.Words[AreStates ? "sides.page-title" : "sides.page-title-two"];

    public string Facts => file.Recipe?.Title is { Length: > 0 } title ? title : file.Name;

    /// <summary>On the button of a row: what was there before comes back, what another recipe has is taken over.</summary>
    public string TakeVerb => voice.Words[AreStates ? "sides.bring" : "sides.take-over"];

    public string ChangedNote => voice.Words[CanTake ? "sides.changed-note" : "sides.changed-note-only"];

    private bool AreStates => Left.State is not null && Right.State is not null;

    /// <summary>Only what is written now can get something back.</summary>
    private bool CanTake => Right.Value == SideAsked.Now && Left.Value != SideAsked.Now && file.IsWhole;

    /// <summary>Of two states, the one that was written first; of two recipes nobody knows.</summary>
    private Tested Earlier => (Left.State, Right.State) switch
    {
        ({ } left, { } right) => left <= right ? Tested.First : Tested.Second,
        _ => Tested.Each,
    };

    /// <summary>What a button sends to bring a row back; null where that cannot be done alone.</summary>
    public string? TakeOf(SideRow row) => CanTake && Taken(row) is not null ? Key(row) : null;

    /// <summary>Whether a row could be brought back if it stood alone: a part that is still used, a line of a part that is not there.</summary>
    public bool IsBound(SideRow row) => CanTake && Taken(row) is null;

    /// <summary>Writes the recipe down as it was in the state on the left.</summary>
    /// <param name="shown">The state that was shown.</param>
    public bool Bring(long? shown, Faults faults) => states.BringBack(shown, Whole, faults);

    /// <summary>Writes the recipe down with one thing as it stands on the left.</summary>
    /// <param name="shown">The state that was shown.</param>
    public bool Take(long? shown, string key, Faults faults)
    {
        if (!CanTake || View?.Changed.FirstOrDefault(row => Key(row) == key) is not { } row || Taken(row) is not { } taken)
        {
            faults.Add("side-not-taken");
            return false;
        }

        var text = RecipeText.Change(file.Text, _ => taken).Text;
        if (Encoding.UTF8.GetByteCount(text) > TextFolder.LargestText || RecipeText.Read(text) is not { Understood: true, Recipe: not null })
        {
            faults.Add("side-not-carried", ("what", row.What));
            return false;
        }

        return states.Write(shown, text, voice.Say(AreStates ? "sides.did" : "sides.did-other", ("what", row.What), ("value", row.First.Under ?? row.First.Text), ("state", Left.Name)), faults);
    }

    private Engine.Recipes.Recipe? Taken(SideRow row) => RecipeDifferences.Take(compared!.First, compared.Second, row.Difference);

    private static string Key(SideRow row)
    {
        var difference = row.Difference;
        return string.Join('/', difference.Aspect, difference.Part, difference.Line, difference.Step, difference.Item);
    }
}
