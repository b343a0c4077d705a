using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.States;
using Doughwright.Engine.Ingredients;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>An own ingredient is written here, a new one or one that the book has.</summary>
public sealed partial class OwnFormPage : DeskPage
{
    /// <summary>Of one that is changed; null for a new one.</summary>
    [Parameter]
    public string? Name { get; set; }

    /// <summary>What a new one is to be called, where that is known.</summary>
    [SupplyParameterFromQuery]
    private string? Called { get; set; }

    /// <summary>Name in the book of the recipe whose line names it, when it is written for one: whoever writes it down goes back there.</summary>
    [SupplyParameterFromQuery]
    private string? Recipe { get; set; }

    /// <summary>Id of the part that the line goes into.</summary>
    [SupplyParameterFromQuery]
    private string? Part { get; set; }

    private OwnPaper? Paper { get; set; }

    private OwnForm? Written { get; set; }

    /// <summary>The state from which a form was sent that could not be taken.</summary>
    private long? Shown { get; set; }

    private string Title => Paper is null ? Voice.Words["larder.own-new"] : Voice.Say("larder.own-change", ("name", Paper.Title));

    private string Back => Line ?? Speaker.To(Paper?.Address ?? "/larder");

    private string BackWords => Voice.Words[Line is not null ? "larder.back-to-line" : Paper is null ? "larder.to-larder" : "larder.back-to-it"];

    private string Action => Speaker.To(Paper is not null ? Paper.Address + "/change" : Line is null ? New : AddressFor(null, Recipe!, Part!));

    /// <summary>The line on the sheet that it is written for; null where it is written for none.</summary>
    private string? Line => Paper is null && Recipe is { } recipe && Part is { Length: > 0 } part && Slug.Of(part) == part && Folder.Recipes.Contains(recipe, StringComparer.Ordinal)
        ? $"{Speaker.To($"/recipes/{Uri.EscapeDataString(recipe)}/write")}#add-{part}"
        : null;

    private const string New = "/larder/new";

    /// <summary>Where an ingredient is written down for a line that is being typed.</summary>
    /// <param name="called">What it is called, where that is known.</param>
    /// <param name="recipe">Name in the book.</param>
    /// <param name="part">Id of the part that the line goes into.</param>
    internal static string AddressFor(string? called, string recipe, string part) => QueryHelpers.AddQueryString(
        New, new Dictionary<string, string?> { ["called"] = called, ["recipe"] = recipe, ["part"] = part }.Where(pair => pair.Value is not null));

    protected override void OnInitialized()
    {
        Paper = Name is null ? null : OwnPaper.Find(Name, Folder);
        if (Name is not null && Paper is null)
        {
            Navigation.NotFound();
            return;
        }

        Written = new(Folder, Voice);
        Written.Form.Fill(Paper is { Reading.Document: { } document }
            ? Engine.TextForm.IngredientText.Fields(document)
            : new Dictionary<string, string> { [OwnForm.NameKey] = Called?.Trim() is { Length: <= Fields.PaperForm.Longest } called ? called : "" });
    }

    private async Task Write()
    {
        var form = await Form();
        Shown = RecipeStates.Number(form["shown"]);
        if ((Paper is null ? Written!.Lay(form) : Written!.Change(Paper, Shown, form)) is { } address)
        {
            SeeThere(Line ?? Speaker.To(address));
            return;
        }

        Shown = Written!.Meanwhile ?? Shown;
        Refuse();
    }
}
