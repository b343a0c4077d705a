using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes;

/// <summary>One recipe on the desk: what is asked of it, and what that comes to. What it holds is replaced as a whole, never changed.</summary>
internal sealed class RecipeDesk(ShelfFolder shelf, Words words, KeptBakes bakes) : IDisposable
{
    /// <summary>A person who types is not done at the first key: so long nothing else is set before a bake is computed.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(250);

    private CancellationTokenSource running = new();
    private Working? working;
    private Setting? setting;
    private Edit? edit;
    private bool gone;

    /// <summary>Something changed that a page shows.</summary>
    public event Action? Changed;

    /// <summary>What lies on the desk; null before a recipe is opened, and when its text cannot be understood.</summary>
    public DeskState? State { get; private set; }

    /// <summary>The text that was opened; null when there is none of this name.</summary>
    public RecipeFile? File { get; private set; }

    /// <summary>Kitchens of the book when the recipe was opened.</summary>
    public IReadOnlyList<KitchenOnShelf> Kitchens { get; private set; } = [];

    /// <summary>The address that shows what lies on the desk.</summary>
    public string Address => AddressOf(setting?.Question);

    /// <summary>The same, and what was refused stands there to be refused again.</summary>
    public string AddressWithRefusals => AddressOf(setting?.Refusals.Aggregate(setting.Question, (asked, refusal) => asked.With(refusal.Option, refusal.Typed)));

    public void Open(string name, Question question, MeasureSystem measures)
    {
        File = RecipeFile.Read(name, shelf);
        if (File is not { Recipe: not null } file)
        {
            return;
        }

        Kitchens = KitchenOnShelf.All(shelf);
        working = new(file, measures, shelf, words, bakes);
        setting = working.Opened(FieldUnit.Complete(question, measures));
        State = working.Done(setting, CancellationToken.None);
    }

    /// <summary>Takes the recipe to another kitchen; null is home.</summary>
    public Task Pick(string? kitchen)
    {
        edit = null;
        return Change(work => work.Picked(setting!, kitchen));
    }

    /// <summary>Sets what a person has typed or picked in the sentence. What cannot be used puts back what held before the person began to type.</summary>
    /// <param name="option">Name of an option of the kitchen, or "dough" or "free".</param>
    public Task Set(string option, string typed)
    {
        var before = edit?.Option == option ? edit.Before : setting;
        edit = null;
        return Change(work => Typed(work, before!, option, typed));
    }

    /// <summary>Follows a person who is still typing: what cannot be used is not yet refused, and what held before is used meanwhile.</summary>
    public Task Type(string option, string typed)
    {
        if (setting is not { } now)
        {
            return Task.CompletedTask;
        }

        var editing = edit = edit?.Option == option ? edit : new(option, now);
        return Change(work =>
        {
            var after = Typed(work, editing.Before, option, typed);
            return after.RefusalOf(option) is null ? after : editing.Before;
        });
    }

    /// <summary>
    /// Computes the bakes over their sections where they are not known yet, beside everything else, and puts them in the place of what was told at
    /// once. What is set meanwhile ends it, and so does leaving the page.
    /// </summary>
    public async Task Bake()
    {
        if (gone || working is not { } work || State is not { AwaitsBakes: true } state)
        {
            return;
        }

        var newer = running.Token;
        try
        {
            await Task.Delay(Quiet, newer);
            var baked = await Task.Run(() => work.Baked(state.Setting, newer), newer);
            newer.ThrowIfCancellationRequested();
            State = baked;
        }
        catch (OperationCanceledException)
        {
            // What was set meanwhile has its bakes computed in turn.
            return;
        }

        Changed?.Invoke();
    }

    public void Dispose()
    {
        if (gone)
        {
            return;
        }

        gone = true;
        running.Cancel();
        running.Dispose();
    }

    private string AddressOf(Question? question) => $"/recipes/{Uri.EscapeDataString(File?.Name ?? "")}{question?.Query()}";

    /// <summary>A field that a person is typing into, and what held when that began.</summary>
    private sealed record Edit(string Option, Setting Before);

    private Setting Typed(Working work, Setting before, string option, string typed)
    {
        var value = FieldUnit.Complete(option, typed.Trim(), State!.Measures);
        return option switch
        {
            not Question.Free when value.Length == 0 => work.Emptied(before, option),
            Question.Free when value.Length == 0 => work.SetDough(before, null, null),
            Question.Free => work.SetDough(before, before.Question.First(Question.Dough) ?? FieldUnit.DoughOf(work.Home), value),
            Question.Dough => work.SetDough(before, value, before.Question.First(Question.Free)),
            _ => work.SetOfKitchen(before, option, value),
        };
    }

    /// <summary>Sets at once, works out beside, and shows when that is done; what is newer cancels what is still running.</summary>
    private async Task Change(Func<Working, Setting> change)
    {
        if (working is not { } work || setting is not { } before)
        {
            return;
        }

        var after = change(work);
        if (after == before)
        {
            return;
        }

        setting = after;
        await running.CancelAsync();
        running.Dispose();
        running = new();
        var newer = running.Token;
        try
        {
            State = before.Question.Equals(after.Question) && State is { } shown && shown.Setting.Question.Equals(after.Question)
                ? shown with { Setting = after }
                : await Task.Run(() => work.Done(after, newer), newer);
            Changed?.Invoke();
        }
        catch (OperationCanceledException)
        {
            // Something newer is on its way and will be shown.
            return;
        }
    }
}
