using Doughwright.App.Desk.Drafting.Views;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Drafting.Sheet;

/// <summary>The live part of the page: a recipe is written here, and what is taken is in the book before it is shown.</summary>
public sealed partial class DraftSheet : ComponentBase, IDisposable
{
    private Manuscript? manuscript;
    private ElementReference undo;
    private ElementReference main;

    /// <summary>Name of the recipe in the book.</summary>
    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    [Inject]
    internal ShelfFolder Shelf { get; set; } = null!;

    [Inject]
    internal OpenDrafts Drafts { get; set; } = null!;

    [Inject]
    internal ShelfClock Clock { get; set; } = null!;

    [Inject]
    internal TimeProvider Time { get; set; } = null!;

    [Inject]
    internal Speaker Speaker { get; set; } = null!;

    [Inject]
    internal NavigationManager Navigation { get; set; } = null!;

    private DraftView? View { get; set; }

    private Pen? Pen { get; set; }

    private KeptHere Kept => new(manuscript!.File, Shelf, Time, Speaker.Voice);

    private Clash? Clash => manuscript?.Clash;

    private Elsewhere? Elsewhere => manuscript?.Elsewhere;

    private string? Said => manuscript?.Said;

    private Words Words => Speaker.Voice.Words;

    private string ReadAddress => ShelfAddress.InMeasures($"/recipes/{Uri.EscapeDataString(Name)}", Speaker.Voice);

    private string StatesAddress => ShelfAddress.InMeasures($"/recipes/{Uri.EscapeDataString(Name)}/states", Speaker.Voice);

    protected override void OnInitialized()
    {
        manuscript = Manuscript.Open(Name, Shelf, Drafts, Speaker.Voice);
        if (manuscript is not null)
        {
            Pen = new(manuscript, Shelf, Speaker.Voice, Show, () => undo.FocusAsync());
            Lay();
            if (RendererInfo.IsInteractive)
            {
                Shelf.Book.Papers.Changed += Hear;
            }
        }
    }

    public void Dispose() => Shelf.Book.Papers.Changed -= Hear;

    /// <summary>Another window wrote, or this one: that is known only once the work that is being done here is done.</summary>
    private void Hear(PaperSort sort, string name)
    {
        if (sort == PaperSort.Recipe && name == Name)
        {
            _ = InvokeAsync(Look);
        }
    }

    private async Task Look()
    {
        await Task.Yield();
        try
        {
            if (manuscript!.Look())
            {
                StateHasChanged();
            }
        }
        catch (IOException problem)
        {
            // Nobody waits for this work: a fault in it is one of the page.
            await DispatchExceptionAsync(problem);
        }
    }

    private void Show()
    {
        Lay();
        StateHasChanged();
    }

    private void Lay() => View = DraftView.Of(manuscript!, Pen!.IsOpen, Pen!.Held, Speaker.Voice, Clock) with { Given = Kept.Given };

    private IReadOnlyList<string> Keep(string name, string note)
    {
        var refused = Kept.Keep(name, note);
        Lay();
        return refused;
    }

    private void Undo() => After(manuscript!.Undo);

    private void Redo() => After(manuscript!.Redo);

    private void Type(string text) => After(() => manuscript!.Type(text));

    private void PutBack() => After(manuscript!.PutBack);

    private Task ShowOther() => Settle(manuscript!.ShowOther);

    private Task TakeOther() => Settle(manuscript!.TakeOther);

    private Task TakeMine() => Settle(manuscript!.TakeMine);

    private Task KeepBoth() => Settle(manuscript!.KeepBoth);

    private Task BackOnShelf() => Settle(manuscript!.BackOnShelf);

    /// <summary>The button that was pressed is gone with what it settled: whoever pressed it stands at the step back, or at the beginning where there is none.</summary>
    private async Task Settle(Action work)
    {
        After(work);
        if (Clash is null)
        {
            StateHasChanged();
            await (View?.Undo is null ? main : undo).FocusAsync();
        }
    }

    private void OnItsOwn()
    {
        if (manuscript!.OnItsOwn() is { } name)
        {
            Navigation.NavigateTo(ShelfAddress.InMeasures($"/recipes/{Uri.EscapeDataString(name)}/write", Speaker.Voice), forceLoad: true);
            return;
        }

        Lay();
    }

    private void After(Action work)
    {
        work();
        Lay();
    }
}
