using Doughwright.App.Commands;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Sizes;

/// <summary>A recipe in another size: asked in a sentence, answered with what it changes, and written down as a recipe of its own.</summary>
public sealed partial class SizePage
{
    private RecipeFile? File { get; set; }

    private SizeAsk Ask { get; set; } = null!;

    private SizedRecipe? Sized { get; set; }

    private SizeView? View { get; set; }

    private string Title { get; set; } = "";

    private IReadOnlyList<Fault> Refused { get; set; } = [];

    private string Path => $"{Home}/size";

    private string Back => Speaker.To(Home);

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
        var form = await Form();
        Title = form[OwnRecipe.TitleName].ToString().Trim();
        var faults = new Faults(Voice);
        if (Sized?.Resized.Recipe is { } recipe && OwnRecipe.Lay(recipe, Title, File!.Reading.Document, File.Paper.State, Folder, faults) is { } address)
        {
            SeeThere(Speaker.To(address));
            return;
        }

        Refused = faults.All;
        Refuse();
    }
}
