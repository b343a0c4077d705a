using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Mending;

/// <summary>Takes the forms that change a recipe's text, and leads back to the recipe. It is seen only when nothing could be written.</summary>
public sealed partial class MendPage
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
    private RecipeDesk Desk { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private Voice Voice => Speaker.Voice;

    private bool Known { get; set; }

    private MendForm? Asked { get; set; }

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private Question Question => Question.Of(Context.Request.QueryString.Value ?? "", WrittenView.Name);

    private string Action => $"/recipes/{Uri.EscapeDataString(Recipe)}/mend{Question.Query()}";

    private string Back => $"/recipes/{Uri.EscapeDataString(Recipe)}{Question.Query()}";

    protected override void OnInitialized()
    {
        if (!Folder.Recipes.Contains(Recipe, StringComparer.Ordinal))
        {
            Navigation.NotFound();
        }
        else if (!HttpMethods.IsPost(Context.Request.Method))
        {
            Navigation.NavigateTo(Back);
        }
        else
        {
            Known = true;
        }
    }

    private async Task Carry()
    {
        Asked = MendForm.Of(await Context.Request.ReadFormAsync(Context.RequestAborted));
        Desk.Open(Recipe, Question, Speaker.Measures);
        var faults = new Faults(Voice);
        if (Desk.File is not null && new Mender(Desk, Folder, Clock, faults).Carry(Asked) is { } stamp)
        {
            Context.Response.StatusCode = StatusCodes.Status303SeeOther;
            Context.Response.Headers.Location = AfterIt(stamp);
            return;
        }

        Faults = faults.All;
        Context.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
    }

    /// <summary>The findings of the recipe in the same kitchen; the lines of its text where one is still not understood.</summary>
    private string AfterIt(string stamp) => RecipeFile.Read(Recipe, Folder) is { Recipe: null }
        ? QueryHelpers.AddQueryString(ShelfAddress.OfText(Recipe, Voice), WrittenView.Name, stamp).Insert(0, "/")
        : QueryHelpers.AddQueryString(Back, WrittenView.Name, stamp) + "#findings";
}
