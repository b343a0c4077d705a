using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Kitchens;
using Doughwright.App.Desk.Recipes.State;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Readying;

/// <summary>"What do I change to be ready at seven?": asked in a sentence, answered by yeast, by water and by both, each with what it costs.</summary>
public sealed partial class ReadyPage
{
    [Inject]
    private LatestAnswers<ReadyView> Answers { get; set; } = null!;

    private ReadyAsk? Ask { get; set; }

    /// <summary>The answer on its way; null when nothing is asked, or what is asked is refused.</summary>
    private Task<ReadyView>? Answering { get; set; }

    private string Title { get; set; } = "";

    private string Facts { get; set; } = "";

    /// <summary>What of the question is refused, and what of the address is not used.</summary>
    private IReadOnlyList<Fault> Refusals => [.. Ask!.Refused, .. Ask.Refusals.Select(refusal => refusal.Fault)];

    /// <summary>With the dough kept as it was, where the page before had it so.</summary>
    private string Back => Home + Question.Of(Query).Without(ReadyAsk.ByName, ReadyAsk.LaterName).Query();

    protected override async Task OnInitializedAsync()
    {
        if (RecipeFile.Read(Recipe, Folder) is not { Recipe: { } recipe } file)
        {
            Navigation.NotFound();
            return;
        }

        if (ReadyAsk.Completed(Query) is { } complete)
        {
            Navigation.NavigateTo(ReadyAsk.PathOf(Recipe) + complete);
            return;
        }

        var (ask, voice) = (ReadyAsk.Of(Query, file, Folder, Voice), Voice);
        Ask = ask;
        Title = ask.Hours is null ? voice.Words["readying.title-open"] : voice.Say("readying.title", ("by", ask.Form.By));
        Facts = voice.Say("placing.facts", ("title", recipe.Title), ("kitchen", KitchenSentence.Of(ask.Read.Kitchen, voice)));
        if (ask.Hours is not null)
        {
            Answering = Answers.For(file, Query, ask.Read.Kitchen, voice, () => ReadyView.Of(file, ask, voice));
            await Task.WhenAny(Answering, Task.Delay(Answers.Patience, Context.RequestAborted));
        }
    }
}
