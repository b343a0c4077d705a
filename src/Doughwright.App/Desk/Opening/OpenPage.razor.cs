using System.Text;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Opening;

/// <summary>Opens a recipe file or a pasted text; shows one of the book that was not understood. Nothing that was typed is lost.</summary>
public sealed partial class OpenPage
{
    /// <summary>Name of a recipe in the book.</summary>
    [SupplyParameterFromQuery]
    private string? Name { get; set; }

    /// <summary>Name of a kitchen in the book.</summary>
    [SupplyParameterFromQuery]
    private string? Kitchen { get; set; }

    /// <summary>Name of the text as it was before the desk changed it just now.</summary>
    [SupplyParameterFromQuery]
    private string? Written { get; set; }

    private OpenAnswer? Answer { get; set; }

    private string Title { get; set; } = "";

    private string Facts { get; set; } = "";

    /// <summary>Under the head of the findings: what happened to the text.</summary>
    private string NotTaken { get; set; } = "";

    private string Text { get; set; } = "";

    /// <summary>Where a change of a recipe of the book is sent; null for a text that lies nowhere yet, which is changed in its field.</summary>
    private MendView? Mend { get; set; }

    /// <summary>What was done in the field just now.</summary>
    private string Mended { get; set; } = "";

    /// <summary>A field leaves out the first new line of its text, so one more stands before it.</summary>
    private string Field => "\n" + Text;

    /// <summary>Tells a text that was typed since from the one that was shown.</summary>
    private string Shown => StateId.OfText(Text);

    protected override void OnInitialized()
    {
        Title = Voice.Words["open.title"];
        Facts = Voice.Words["open.facts"];
        NotTaken = Voice.Words["open.not-taken"];
        if (HttpMethods.IsGet(Context.Request.Method) && (Name ?? Kitchen) is { Length: > 0 } name)
        {
            Show(Name is null ? Folder.KitchenTexts : Folder.RecipeTexts, name, isKitchen: Name is null);
        }
    }

    private void Show(BookTexts folder, string name, bool isKitchen)
    {
        if (folder.Read(name) is not { } bytes)
        {
            Answer = new() { Fault = OpenFault.Of("open-not-there", Voice, ("name", name), ("folder", folder.Path)) };
            return;
        }

        Title = name;
        Facts = Voice.Say("open.lies-in", ("file", folder.FileOf(name)));
        Answer = Opener.Show(bytes, isKitchen, Voice);
        NotTaken = Voice.Words["open.mend"];
        Text = Answer.Text;
        if (!isKitchen && RecipeFile.Read(name, Folder) is { } file)
        {
            Mend = MendView.Of(file, Question.Nothing.With(Question.Measures, ShelfAddress.MeasuresOf(Voice)), WrittenView.Of(Written, file, Voice));
        }

        if (Answer is { Fault: null, Findings.Count: 0 })
        {
            NotTaken = "";
            Facts = Voice.Say("open.understood", ("file", folder.FileOf(name)));
        }
    }

    private async Task Take()
    {
        var form = await Form();
        var typed = OpenedText.AsTyped(form["text"].ToString());
        var file = form.Files.GetFile("file");
        Text = typed;
        if (form[MendForm.DoName].ToString() is { Length: > 0 } way && Opener.Mended(typed, way, Voice) is { } mended)
        {
            Text = mended.Text;
            Answer = Opener.ShowTyped(Text, Voice);
            Mended = Voice.Say(Answer is { Fault: null, Findings.Count: 0 } ? "open.mended-understood" : "open.mended", ("verb", mended.Verb));
            return;
        }

        if (await Given(file, typed, form["shown"].ToString()) is not { } given)
        {
            Refuse();
            return;
        }

        Answer = Opener.Take(given, Folder, Voice);
        if (Answer.Address is { } address)
        {
            SeeThere(address);
            return;
        }

        Refuse();
        Text = given.FileName is null ? typed : Answer.Text;
        NotTaken = Text.Length > 0 ? NotTaken : Voice.Words["open.not-taken-file"];
    }

    /// <summary>The text that is meant; null with a fault when there is none, or two.</summary>
    private async Task<OpenedText?> Given(IFormFile? file, string typed, string shown)
    {
        var isTyped = typed.Length > 0 && StateId.OfText(typed) != shown;
        if (file is { FileName.Length: > 0 })
        {
            if (isTyped)
            {
                Answer = new() { Fault = OpenFault.Of("open-both", Voice, ("file", Path.GetFileName(file.FileName))) };
                return null;
            }

            using var bytes = new MemoryStream();
            await file.CopyToAsync(bytes, Context.RequestAborted);
            return new(bytes.ToArray(), Path.GetFileName(file.FileName));
        }

        if (typed.Length > 0)
        {
            return new(Encoding.UTF8.GetBytes(typed), null);
        }

        Answer = new() { Fault = OpenFault.Of("open-nothing", Voice) };
        return null;
    }
}
