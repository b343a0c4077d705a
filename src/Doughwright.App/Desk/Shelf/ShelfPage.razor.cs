using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Layout;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Logging;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The shelf: what is kept stands at once, the rest comes as it is rehearsed (<see cref="ShelfRows"/>), and leaving the page ends the rehearsing.</summary>
public sealed partial class ShelfPage
{
    /// <summary>So long the page waits for all rows before it is sent without them. A browser without script then has them too.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(500);

    [CascadingParameter]
    private HttpContext Context { get; set; } = null!;

    [Inject]
    private Speaker Speaker { get; set; } = null!;

    [Inject]
    private ShelfFolder Folder { get; set; } = null!;

    [Inject]
    private ShelfClock Clock { get; set; } = null!;

    [Inject]
    private KeptResults Kept { get; set; } = null!;

    [Inject]
    private RowKey Keys { get; set; } = null!;

    [Inject]
    private ILogger<ShelfPage> Log { get; set; } = null!;

    private Voice Voice { get; set; } = null!;

    private ShelfSentence Sentence { get; set; } = null!;

    /// <summary>How many recipes there are.</summary>
    private string? Facts { get; set; }

    private ShelfFilter Filter { get; set; } = null!;

    /// <summary>What can be shown instead.</summary>
    private IReadOnlyList<FilterLink> Links { get; set; } = [];

    /// <summary>How many of all are shown.</summary>
    private string Shown { get; set; } = "";

    /// <summary>Address of the shelf with all of them.</summary>
    private string All { get; set; } = "/";

    /// <summary>Set once the page has waited long enough.</summary>
    private ShelfRunning? Running { get; set; }

    /// <summary>Why there is no shelf.</summary>
    private string? Trouble { get; set; }

    private IReadOnlyList<UnreadKitchen> Unread { get; set; } = [];

    /// <summary>How many recipes were taken off the shelf.</summary>
    private int TakenOff { get; set; }

    private string FolderWords => Voice.Say("shelf.folder", ("file", Folder.Book.Path));

    protected override async Task OnInitializedAsync()
    {
        Voice = Speaker.Voice;
        var kitchens = KitchenOnShelf.All(Folder);
        var query = Context.Request.Query;
        string[] known = [.. kitchens.Where(kitchen => kitchen.Kitchen is not null).Select(kitchen => kitchen.Name)];
        Filter = ShelfFilter.Read(name => query[name].FirstOrDefault());
        var asked = ShelfAsked.Read(name => query[name].FirstOrDefault(), Clock, known, named => KitchenAsked.FileOf(named, Folder), Voice);
        Sentence = ShelfSentence.Of(asked, Clock, kitchens, Speaker.MeasuresRefused, Voice);
        Unread = [.. kitchens.Where(kitchen => kitchen.Kitchen is null).Select(kitchen => UnreadKitchen.Of(kitchen.Name, Voice))];
        if (Begin(asked) is not { } work)
        {
            return;
        }

        TakenOff = Folder.RecipeTexts.TakenAway().Count;
        var all = Folder.Recipes.Count;
        Facts = all == 1 ? Voice.Words["shelf.recipe"] : Voice.Say("shelf.recipes", ("count", all));
        var here = QueryHelpers.AddQueryString("", ShelfAsked.Given(query, ShelfAddress.MeasuresOf(Voice)));
        All = here.Length == 0 ? "/" : "/" + here;
        Links = ShelfFilter.Links(Folder.Book.Said.All(PaperSort.Recipe).Values, All, Voice);
        Shown = Filter.IsAll ? Voice.Say("shelf.all-here", ("count", all)) : Voice.Say("shelf.some-here", ("shown", work.Entries.Count), ("count", all), ("what", Filter.Words(Voice)));
        var leaving = Context.RequestAborted;
        var running = new ShelfRunning(work, Task.Run(() => work.Finish(leaving), leaving), asked);
        await running.Wait(Patience, leaving);
        Running = running;
    }

    private ShelfWork? Begin(ShelfAsked asked)
    {
        try
        {
            var kitchen = asked.Kitchen is { } name ? ShelfKitchen.Find(Folder, name) ?? ShelfKitchen.Own : ShelfKitchen.Own;
            return ShelfWork.Begin(Folder, Filter, kitchen, Kept, Keys, Voice, TellFault);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Trouble = Voice.Say("shelf.folder-unreadable", ("file", Folder.Book.Path), ("reason", problem.Message));
            return null;
        }
    }

    private void TellFault(string recipe, Exception fault) => RowFault(Log, recipe, fault);

    [LoggerMessage(LogLevel.Error, "The row of {Recipe} could not be made.")]
    private static partial void RowFault(ILogger log, string recipe, Exception fault);

    /// <summary>A kitchen that cannot be chosen, and the page that shows why.</summary>
    private sealed record UnreadKitchen(string Words, string Address)
    {
        public static UnreadKitchen Of(string name, Voice voice) =>
            new(voice.Say("shelf.kitchen-not-understood", ("name", name)), ShelfAddress.OfKitchenText(name, voice));
    }
}
