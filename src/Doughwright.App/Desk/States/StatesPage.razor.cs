using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.States;

/// <summary>The states of a recipe: the one it is in is kept by a name, and any other is brought back or set beside it.</summary>
public sealed partial class StatesPage
{
    private RecipeStates? states;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    private StatesView? View { get; set; }

    private IReadOnlyList<FamilyMember> Relatives { get; set; } = [];

    private FamilyDrawn? Drawn { get; set; }

    private Published? Given { get; set; }

    private string Title { get; set; } = "";

    private string Name { get; set; } = "";

    private string Note { get; set; } = "";

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private string Action => Speaker.To($"{Home}/states");

    protected override void OnInitialized() => Lay();

    private void Lay()
    {
        if (RecipeFile.Read(Recipe, Folder) is not { } file)
        {
            Navigation.NotFound();
            return;
        }

        var days = new StateDays(Clock, Voice);
        Title = file.Recipe?.Title is { Length: > 0 } title ? title : Recipe;
        states = new(file, Folder, days, Voice);
        View = StatesView.Of(file, states, Folder, days, Voice);
        Given = new(Recipe, Folder, days, Voice);
        var family = new Family(Folder, days, Voice);
        Relatives = family.All(file.Paper);
        Drawn = FamilyDrawn.Of(Title, file.Paper, states, Relatives, [states.Now], days, Voice);
    }

    private async Task Keep()
    {
        var form = await Form();
        (Name, Note) = (form["name"].ToString().Trim(), form["note"].ToString().Trim());
        var faults = new Faults(Voice);
        Answer(states!.Keep(RecipeStates.Number(form["shown"]), Name, Note, form.ContainsKey("published"), faults), faults);
    }

    private async Task Correct()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        Answer(Given!.Add(RecipeStates.Number(form["kept"]), form["text"].ToString().Trim(), form["place"].ToString().Trim(), faults), faults);
    }

    private async Task Make()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        Answer(Given!.Make(RecipeStates.Number(form["made"]), faults), faults);
    }

    private async Task BringBack()
    {
        var form = await Form();
        var faults = new Faults(Voice);
        Answer(states!.BringBack(RecipeStates.Number(form["shown"]), RecipeStates.Number(form["state"]), faults), faults);
    }

    private void Answer(bool done, Faults faults)
    {
        if (done)
        {
            SeeThere(Action);
            return;
        }

        Faults = faults.All;
        // What is shown now is what the next form starts from.
        Lay();
        Refuse();
    }
}
