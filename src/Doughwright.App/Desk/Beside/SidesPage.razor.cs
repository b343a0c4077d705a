using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.States;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Beside;

/// <summary>Two states of a recipe, or two recipes, side by side: what differs, what that does in a kitchen, and one difference brought back.</summary>
public sealed partial class SidesPage
{
    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    [Inject]
    private LatestAnswers<SidesView> Answers { get; set; } = null!;

    private SidesDesk? Desk { get; set; }

    /// <summary>What moved the figures, on its way; null where it is not asked for, or stands there at once.</summary>
    private Task<SidesView>? Reasoning { get; set; }

    private IReadOnlyList<FamilyMember> Relatives { get; set; } = [];

    private FamilyDrawn? Drawn { get; set; }

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private const string BecauseName = "because";

    private string Path => $"{Home}/sides";

    /// <summary>The same, with what moved each figure.</summary>
    private string WithCauses => QueryHelpers.AddQueryString(Path + Query, BecauseName, "yes");

    protected override async Task OnInitializedAsync()
    {
        Lay();
        if (Reasoning is not null)
        {
            await Task.WhenAny(Reasoning, Task.Delay(Answers.Patience, Context.RequestAborted));
        }
    }

    private void Lay()
    {
        if (RecipeFile.Read(Recipe, Folder) is not { } file)
        {
            Navigation.NotFound();
            return;
        }

        var asked = QueryHelpers.ParseQuery(Query);
        var faults = new Faults(Voice);
        var days = new StateDays(Clock, Voice);
        var states = new RecipeStates(file, Folder, days, Voice);
        var left = Side(asked.TryGetValue("left", out var first) ? first.ToString() : Before(states), file, states, faults);
        var right = Side(asked.TryGetValue("right", out var second) ? second.ToString() : SideAsked.Now, file, states, faults);
        var kitchen = KitchenChoice.Of(asked.TryGetValue("kitchen", out var named) ? named.ToString() : "", Folder, faults);
        Desk = new(file, states, left, right, kitchen, asked.ContainsKey(BecauseName), Folder, Voice);
        Relatives = new Family(Folder, days, Voice).All(file.Paper);
        Drawn = FamilyDrawn.Of(Desk.Facts, file.Paper, states, Relatives, Desk.Shown, days, Voice);
        Faults = faults.All;
        Reasoning = Desk is { IsAsked: true, View: not null } ? Desk.Reasoned(Answers) : null;
    }

    /// <summary>Without a word about it: the state that was kept last, other than the one it is in.</summary>
    private static string Before(RecipeStates states) =>
        states.Kept.FirstOrDefault(kept => kept.State != states.Now) is { } kept ? FormattableString.Invariant($"{kept.State}") : SideAsked.Now;

    private SideAsked Side(string value, RecipeFile file, RecipeStates states, Faults faults)
    {
        if (SideAsked.Of(value, file, states, Folder) is { } side)
        {
            return side;
        }

        faults.Add("side-unknown", ("given", value));
        return SideAsked.Of(SideAsked.Now, file, states, Folder)!;
    }

    private async Task Bring()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        Answer(Desk!.Bring(RecipeStates.Number(form["shown"]), faults), faults);
    }

    private async Task Take()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        Answer(Desk!.Take(RecipeStates.Number(form["shown"]), form["take"].ToString(), faults), faults);
    }

    private void Answer(bool done, Faults faults)
    {
        if (done)
        {
            SeeThere(Path + Query);
            return;
        }

        // What is shown now is what the next form starts from.
        Lay();
        Faults = [.. Faults, .. faults.All];
        Refuse();
    }
}
