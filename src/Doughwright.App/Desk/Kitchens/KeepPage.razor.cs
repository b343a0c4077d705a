using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>Gives the kitchen that is set on a recipe's page a name and keeps it. The address is that of the recipe's page, and asks the same.</summary>
public sealed partial class KeepPage
{
    private KitchenKept? Kept { get; set; }

    private string Name { get; set; } = "";

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private string Action => $"{Home}/kitchen{Query}";

    private string Back => $"{Home}{Query}";

    protected override void OnInitialized()
    {
        Kept = KitchenKept.Of(Recipe, Question.Of(Query), Folder, Voice.Words);
        if (Kept is null)
        {
            Navigation.NotFound();
        }
    }

    private async Task Keep()
    {
        var form = await Form();
        Name = form["name"].ToString().Trim();
        var faults = new Faults(Voice);
        if (Kept!.Keep(Name, Folder, faults) is { } address)
        {
            SeeThere(address);
            return;
        }

        Faults = faults.All;
        Refuse();
    }
}
