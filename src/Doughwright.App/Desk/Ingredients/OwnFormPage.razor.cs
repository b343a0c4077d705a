using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.States;
using Microsoft.AspNetCore.Components;

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

    private OwnPaper? Paper { get; set; }

    private OwnForm? Written { get; set; }

    /// <summary>The state from which a form was sent that could not be taken.</summary>
    private long? Shown { get; set; }

    private string Title => Paper is null ? Voice.Words["larder.own-new"] : Voice.Say("larder.own-change", ("name", Paper.Title));

    private string Back => Paper?.Address ?? "/larder";

    private string Action => Speaker.To(Paper is null ? "/larder/new" : Paper.Address + "/change");

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
            SeeThere(Speaker.To(address));
            return;
        }

        Shown = Written!.Meanwhile ?? Shown;
        Refuse();
    }
}
