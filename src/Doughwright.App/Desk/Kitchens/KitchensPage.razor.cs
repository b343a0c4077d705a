using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Layout;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>The kitchens that are kept, each in words; one can be taken away and brought back.</summary>
public sealed partial class KitchensPage
{
    private const string AwayName = "away";

    /// <summary>Name of the kitchen that was taken away just now.</summary>
    [SupplyParameterFromQuery]
    private string? Taken { get; set; }

    private IReadOnlyList<KitchenRow> Rows { get; set; } = [];

    private IReadOnlyList<TakenRow> TakenAway { get; set; } = [];

    private string Said { get; set; } = "";

    private string? CanComeBack { get; set; }

    protected override void OnInitialized()
    {
        Rows = KitchenRow.All(Folder, Voice);
        if (Taken is { Length: > 0 } taken && Folder.KitchenTexts.CanPutBack(taken))
        {
            (Said, CanComeBack) = (Voice.Say("kitchens.taken", ("name", taken)), taken);
        }

        TakenAway = TakenRow.All(Folder.KitchenTexts, CanComeBack, text => KitchenText.Read(text).Kitchen?.Name);
    }

    /// <summary>Carries out what a button asks and leads on, so that loading the page again repeats nothing.</summary>
    private async Task Move()
    {
        var form = await Form();
        var (away, back) = (form[AwayName].ToString(), form[TakenRow.Back].ToString());
        var name = away.Length > 0 ? away : back;
        try
        {
            if (away.Length > 0 ? Folder.KitchenTexts.TakeAway(away) : Folder.KitchenTexts.PutBack(back))
            {
                SeeThere(Speaker.To(away.Length > 0 ? QueryHelpers.AddQueryString("/kitchens", "taken", away) : "/kitchens"));
                return;
            }

            Said = Voice.Say("kitchens.not-there", ("name", name));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Said = Voice.Say("kitchens.not-carried", ("folder", Folder.KitchenTexts.Path), ("reason", problem.Message));
        }

        Refuse();
    }
}
