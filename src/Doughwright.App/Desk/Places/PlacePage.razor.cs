using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Kitchens;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes.State;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Places;

/// <summary>"How do I get 26 °C here?": asked in a sentence, answered with places that can be made warm, and with the slower choice.</summary>
public sealed partial class PlacePage
{
    [Inject]
    private LatestAnswers<PlaceView> Answers { get; set; } = null!;

    private RecipeFile? File { get; set; }

    private PlaceAsk? Ask { get; set; }

    /// <summary>The answer on its way; null when nothing is asked, or what is asked is refused.</summary>
    private Task<PlaceView>? Answering { get; set; }

    private string Title { get; set; } = "";

    private string Facts { get; set; } = "";

    /// <summary>What of the question is refused, and what of the address is not used.</summary>
    private IReadOnlyList<Fault> Refusals => [.. Ask!.Refused, .. Ask.Refusals.Select(refusal => refusal.Fault)];

    private string Path => $"{Home}/place";

    private string Back => $"{Home}{Ask!.Read.Accepted.Query()}";

    /// <summary>What the form carries on beside its own two fields.</summary>
    private IEnumerable<Asked> Carried => Question.Of(Query, PlaceAsk.ToName, PlaceAsk.StepName, Question.Proof).Items;

    protected override async Task OnInitializedAsync()
    {
        File = RecipeFile.Read(Recipe, Folder);
        if (File is not { Recipe: { } recipe } file)
        {
            Navigation.NotFound();
            File = null;
            return;
        }

        if (PlaceAsk.Completed(Query, Speaker.Measures) is { } complete)
        {
            Navigation.NavigateTo(Path + complete);
            return;
        }

        var (ask, voice) = (PlaceAsk.Of(Query, file, Folder, Voice), Voice);
        Ask = ask;
        Title = ask is { Target: { } target } ? Voice.Say("placing.title", ("target", target)) : Voice.Words["placing.title-open"];
        Facts = Voice.Say("placing.facts", ("title", recipe.Title), ("kitchen", KitchenSentence.Of(ask.Read.Kitchen, Voice)));
        if (ask is { Step: not null, Target: not null, Refused.Count: 0 })
        {
            Answering = Answers.For(file, Query, ask.Read.Kitchen, voice, () => PlaceView.Of(file, ask, voice));
            await Task.WhenAny(Answering, Task.Delay(Answers.Patience, Context.RequestAborted));
        }
    }
}
