using Doughwright.App.Commands;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Sizes;

/// <summary>A recipe in another size: asked in a sentence, answered with what it changes, and written down as a recipe of its own.</summary>
public sealed partial class SizePage
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

    private RecipeFile? File { get; set; }

    private SizeAsk Ask { get; set; } = null!;

    private SizedRecipe? Sized { get; set; }

    private SizeView? View { get; set; }

    private string Title { get; set; } = "";

    private IReadOnlyList<Fault> Refused { get; set; } = [];

    private string Path => $"/recipes/{Uri.EscapeDataString(Recipe)}/size";

    private string Query => Context.Request.QueryString.Value ?? "";

    private string Back => Speaker.To($"/recipes/{Uri.EscapeDataString(Recipe)}");

    protected override void OnInitialized()
    {
        File = RecipeFile.Read(Recipe, Folder);
        if (File is not { Recipe: not null } file)
        {
            Navigation.NotFound();
            File = null;
            return;
        }

        if (SizeAsk.OfForm(Path, Query, Speaker.Measures) is { } address)
        {
            Navigation.NavigateTo(address);
            return;
        }

        Ask = SizeAsk.Of(Query, file, Folder, Voice);
        if (Ask.Request is { } request)
        {
            Sized = SizedRecipe.Of(file.Reading, request, file.Text, file.Findings);
            View = SizeView.Of(Sized, file, TakeAddress, Voice);
            Title = View.Title ?? "";
        }
    }

    /// <summary>The same size with so many whole pieces of a line.</summary>
    private string TakeAddress(string line, int count) => QueryHelpers.AddQueryString(Path + Query, "take", FormattableString.Invariant($"{line}={count}"));

    private async Task Keep()
    {
        var form = await Context.Request.ReadFormAsync(Context.RequestAborted);
        Title = form["title"].ToString().Trim();
        var faults = new Faults(Voice);
        if (Sized?.Resized.Recipe is { } recipe && OwnRecipe.Lay(recipe, Title, File!.Reading.Document, Folder, faults) is { } address)
        {
            Context.Response.StatusCode = StatusCodes.Status303SeeOther;
            Context.Response.Headers.Location = Speaker.To(address);
            return;
        }

        Refused = faults.All;
        Context.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
    }
}
