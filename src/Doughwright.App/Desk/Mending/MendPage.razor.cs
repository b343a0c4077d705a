using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Mending;

/// <summary>Takes the forms that change a recipe's text, and leads back to the recipe. It is seen only when nothing could be written.</summary>
public sealed partial class MendPage
{
    [Inject]
    private RecipeDesk Desk { get; set; } = null!;

    private bool Known { get; set; }

    private MendForm? Asked { get; set; }

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private Question Question => Question.Of(Context.Request.QueryString.Value ?? "", WrittenView.Name);

    private string Action => $"{Home}/mend{Question.Query()}";

    private string Back => $"{Home}{Question.Query()}";

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
        Asked = MendForm.Of(await Form());
        Desk.Open(Recipe, Question, Speaker.Measures);
        var faults = new Faults(Voice);
        if (Desk.File is not null && new Mender(Desk, Folder, faults).Carry(Asked) is { } stamp)
        {
            SeeThere(AfterIt(stamp));
            return;
        }

        Faults = faults.All;
        Refuse();
    }

    /// <summary>The findings of the recipe in the same kitchen; the lines of its text where one is still not understood.</summary>
    private string AfterIt(string stamp) => RecipeFile.Read(Recipe, Folder) is { Recipe: null }
        ? QueryHelpers.AddQueryString(ShelfAddress.OfText(Recipe, Voice), WrittenView.Name, stamp).Insert(0, "/")
        : QueryHelpers.AddQueryString(Back, WrittenView.Name, stamp) + "#findings";
}
