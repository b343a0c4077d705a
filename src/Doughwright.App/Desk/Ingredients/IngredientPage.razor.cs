using Doughwright.App.Desk.Layout;
using Doughwright.Engine.Ingredients;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>An ingredient that comes with the program.</summary>
public sealed partial class IngredientPage : DeskPage
{
    /// <summary>Of its row.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    [Inject]
    private UsedIn UsedIn { get; set; } = null!;

    private IngredientView? View { get; set; }

    protected override void OnInitialized()
    {
        if (Larder.Shipped.WithId(Id) is not { } row)
        {
            Navigation.NotFound();
            return;
        }

        View = IngredientView.Of(row, UsedIn, Voice);
    }
}
