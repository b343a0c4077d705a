using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>Gives the kitchen that is set on a recipe's page a name and keeps it. The address is that of the recipe's page, and asks the same.</summary>
public sealed partial class KeepPage
{
    [Parameter]
    public string Recipe { get; set; } = "";

    [CascadingParameter]
    private HttpContext Context { get; set; } = null!;

    [Inject]
    private Speaker Speaker { get; set; } = null!;

    [Inject]
    private ShelfFolder Folder { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private Voice Voice => Speaker.Voice;

    private KitchenKept? Kept { get; set; }

    private string Name { get; set; } = "";

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private string Query => Context.Request.QueryString.Value ?? "";

    private string Action => $"/recipes/{Uri.EscapeDataString(Recipe)}/kitchen{Query}";

    private string Back => $"/recipes/{Uri.EscapeDataString(Recipe)}{Query}";

    protected override void OnInitialized()
    {
        Kept = KitchenKept.Of(Recipe, Question.Of(Query), Folder, Voice.Words);
        if (Kept is null)
        {
            Navigation.NotFound();
        }
    }

    private async Task Keep()
    {
        var form = await Context.Request.ReadFormAsync(Context.RequestAborted);
        Name = form["name"].ToString().Trim();
        var faults = new Faults(Voice);
        if (Kept!.Keep(Name, Folder, faults) is { } address)
        {
            Context.Response.StatusCode = StatusCodes.Status303SeeOther;
            Context.Response.Headers.Location = address;
            return;
        }

        Faults = faults.All;
        Context.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
    }
}
