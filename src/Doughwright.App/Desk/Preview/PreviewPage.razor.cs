using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Preview;

/// <summary>The page for readers as "page" writes it, looked at before it is given away.</summary>
public sealed partial class PreviewPage
{
    [Inject]
    private Words Words { get; set; } = null!;

    private PageAsked? Asked { get; set; }

    private string Title { get; set; } = "";

    private string? Lettering { get; set; }

    private string Facts { get; set; } = "";

    private string FileName { get; set; } = "";

    private IReadOnlyList<FindingView> Findings { get; set; } = [];

    private string Note { get; set; } = "";

    /// <summary>What of the address is not used, and why.</summary>
    private IReadOnlyList<Fault> Refusals => [.. Asked!.Refusals.Select(refusal => refusal.Fault)];

    /// <summary>What of the address is used.</summary>
    private Question Question => Asked!.Read.Accepted;

    private string Back => $"{Home}{Question.Query()}";

    protected override void OnInitialized()
    {
        Asked = PageAsked.Of(Recipe, Context.Request.QueryString.Value ?? "", Folder, Words);
        if (Asked is not { File.Recipe: { } recipe } asked)
        {
            Navigation.NotFound();
            return;
        }

        var made = asked.Made();
        FileName = made.FileName;
        Title = Voice.Say("preview.title", ("title", recipe.Title));
        Lettering = HeadView.LetteringOf(Title);
        var kitchen = asked.Read.Kitchen.Name;
        Facts = Voice.Say(kitchen.Length > 0 ? "preview.facts" : "preview.facts-unnamed", ("kitchen", kitchen), ("size", PageCommand.Size(made.Page.Bytes.Length, Voice)));
        Findings = FindingView.All(made.Page.Findings.Open, recipe, Voice);
        Note = Findings.Count == 0 ? Voice.Words["recipe.count.none"] : Voice.Words["preview.findings-note"];
    }
}
