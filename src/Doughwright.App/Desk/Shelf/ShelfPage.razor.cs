using Doughwright.App.Desk.Layout;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The shelf: what is kept stands at once, the rest comes as it is rehearsed, and leaving the page ends the rehearsing.</summary>
public sealed partial class ShelfPage
{
    /// <summary>So long the page waits for all rows before it is sent without them. A browser without script then has them too.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(500);

    private static readonly TimeSpan BetweenPictures = TimeSpan.FromMilliseconds(400);

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

    private Voice Voice { get; set; } = null!;

    private ShelfSentence Sentence { get; set; } = null!;

    private ShelfView? View { get; set; }

    /// <summary>Why there is no shelf.</summary>
    private string? Trouble { get; set; }

    private IReadOnlyList<UnreadKitchen> Unread { get; set; } = [];

    private string FolderWords => Voice.Say("shelf.folder", ("folder", Folder.Folder.Root));

    protected override async Task OnInitializedAsync()
    {
        Voice = Speaker.Voice;
        var kitchens = KitchenOnShelf.All(Folder);
        var query = Context.Request.Query;
        string[] known = [.. kitchens.Where(kitchen => kitchen.Kitchen is not null).Select(kitchen => kitchen.Name)];
        var asked = ShelfAsked.Read(name => query[name].FirstOrDefault(), Clock, known, Voice);
        Sentence = ShelfSentence.Of(asked, Clock, kitchens, Voice);
        Unread = [.. kitchens.Where(kitchen => kitchen.Kitchen is null).Select(kitchen => UnreadKitchen.Of(kitchen.Name, Voice))];
        if (Begin(asked) is not { } work)
        {
            return;
        }

        var leaving = Context.RequestAborted;
        var finishing = Task.Run(() => work.Finish(leaving), leaving);
        finishing.Wait(Patience, leaving);
        for (View = ShelfView.Of(work, asked, Clock, Voice); View.Progress is not null; View = ShelfView.Of(work, asked, Clock, Voice))
        {
            StateHasChanged();
            if (await Task.WhenAny(finishing, Task.Delay(BetweenPictures, leaving)) == finishing)
            {
                await finishing;
            }

            leaving.ThrowIfCancellationRequested();
        }
    }

    private ShelfWork? Begin(ShelfAsked asked)
    {
        try
        {
            var kitchen = asked.Kitchen is { } name ? ShelfKitchen.Find(Folder, name) ?? ShelfKitchen.Own : ShelfKitchen.Own;
            return ShelfWork.Begin(Folder.RecipeTexts, kitchen, Kept, Keys, Voice);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Trouble = Voice.Say("shelf.folder-unreadable", ("folder", Folder.Folder.Recipes));
            return null;
        }
    }

    /// <summary>A kitchen that cannot be chosen, and the page that shows why.</summary>
    private sealed record UnreadKitchen(string Words, string Address)
    {
        public static UnreadKitchen Of(string name, Voice voice) =>
            new(voice.Say("shelf.kitchen-not-understood", ("name", name)), QueryHelpers.AddQueryString("open", ShelfAsked.KitchenName, name));
    }
}
