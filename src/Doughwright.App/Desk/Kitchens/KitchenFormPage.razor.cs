using Doughwright.App.Commands;
using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.States;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>A kitchen is made here, or one of the book changed.</summary>
public sealed partial class KitchenFormPage : DeskPage
{
    /// <summary>Of one that is changed; null for a new one.</summary>
    [Parameter]
    public string? Name { get; set; }

    private Paper? Paper { get; set; }

    private KitchenForm? Written { get; set; }

    /// <summary>The state from which a form was sent that could not be taken.</summary>
    private long? Shown { get; set; }

    private string Title { get; set; } = "";

    private string Action => Speaker.To(Paper is null ? "/kitchens/new" : $"/kitchens/{Uri.EscapeDataString(Paper.Name)}/change");

    protected override void OnInitialized() => Lay();

    private void Lay()
    {
        Paper = Name is null ? null : Folder.KitchenTexts.Find(Name);
        if (Name is not null && Paper is null)
        {
            Navigation.NotFound();
            return;
        }

        Written = new(Folder, Voice);
        var reading = Paper is null ? null : KitchenText.Read(System.Text.Encoding.UTF8.GetString(Folder.KitchenTexts.Read(Paper)));
        Title = Paper is null ? Voice.Words["kitchens.new"] : Voice.Say("kitchens.change", ("name", reading?.Kitchen is { Name.Length: > 0 } kitchen ? kitchen.Name : Paper.Name));
        if (reading?.Document is { } document)
        {
            Written.Form.Fill(KitchenText.Fields(document));
        }
    }

    private async Task Write()
    {
        var form = await Form();
        Shown = RecipeStates.Number(form["shown"]);
        if ((Paper is null ? Written!.Lay(form) : Written!.Change(Paper, Shown, form)) is not null)
        {
            SeeThere(Speaker.To("/kitchens"));
            return;
        }

        Shown = Written!.Meanwhile ?? Shown;
        Refuse();
    }

    private async Task Step()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        try
        {
            if (Stepping.Step(Folder.KitchenTexts, Paper!, RecipeStates.Number(form["shown"]), form["step"] == "on", Paper!.Name, faults))
            {
                SeeThere(Action);
                return;
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("paper-not-written", ("folder", Folder.KitchenTexts.Path), ("reason", problem.Message));
        }

        Lay();
        Written!.Form.Refuse(faults);
        Refuse();
    }
}
