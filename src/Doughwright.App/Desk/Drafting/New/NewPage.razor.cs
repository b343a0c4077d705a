using Doughwright.App.Commands;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.App.Desk.Drafting.New;

/// <summary>Begins a recipe from nothing.</summary>
public sealed partial class NewPage : DeskPage
{
    /// <summary>A usual room, where the book has no kitchen yet.</summary>
    private static readonly Kitchen UsualRoom = new() { Air = AirProfile.Constant(Temperature.FromCelsius(21)) };

    private string Title { get; set; } = "";

    private string Line { get; set; } = "";

    private string Kitchen { get; set; } = "";

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private IReadOnlyList<KitchenOnShelf> Kitchens { get; set; } = [];

    private string? Invalid => Faults.Count > 0 ? "true" : null;

    private string? Reason => Faults.Count > 0 ? "new-refused" : null;

    protected override void OnInitialized()
    {
        Kitchens = [.. KitchenOnShelf.All(Folder).Where(kitchen => kitchen.Kitchen is not null)];
        Line = Voice.Words["new.first-line"];
    }

    private async Task Begin()
    {
        var form = await Form();
        (Title, Line, Kitchen) = (form[OwnRecipe.TitleName].ToString().Trim(), form[NewRecipe.LineName].ToString().Trim(), form[NewRecipe.KitchenName].ToString());
        var faults = new Faults(Voice);
        var home = Kitchens.FirstOrDefault(kitchen => kitchen.Name == Kitchen)?.Kitchen ?? UsualRoom;
        if (NewRecipe.Lay(Title, Line, home, Folder, faults) is { } address)
        {
            SeeThere(Speaker.To(address));
            return;
        }

        Faults = faults.All;
        Refuse();
    }
}
