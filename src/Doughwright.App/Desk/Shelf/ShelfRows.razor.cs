using Doughwright.App.Desk.Layout;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The rows of the shelf, sent again and again until all of them are known.</summary>
public sealed partial class ShelfRows
{
    private static readonly TimeSpan BetweenPictures = TimeSpan.FromMilliseconds(400);

    [CascadingParameter]
    private HttpContext Context { get; set; } = null!;

    [CascadingParameter]
    private ShelfRunning Running { get; set; } = null!;

    [Inject]
    private Speaker Speaker { get; set; } = null!;

    [Inject]
    private ShelfClock Clock { get; set; } = null!;

    private Voice Voice { get; set; } = null!;

    private ShelfView? View { get; set; }

    protected override async Task OnInitializedAsync()
    {
        Voice = Speaker.Voice;
        var leaving = Context.RequestAborted;
        for (View = Look(); View.Progress is not null; View = Look())
        {
            StateHasChanged();
            await Running.Wait(BetweenPictures, leaving);
        }
    }

    private ShelfView Look() => ShelfView.Of(Running.Work, Running.Asked, Clock, Voice);
}
