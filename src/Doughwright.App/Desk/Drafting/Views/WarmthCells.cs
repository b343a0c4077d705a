using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>How warm each line goes in at home, as the sheet shows it.</summary>
/// <param name="atHome">Null where nothing can be rehearsed.</param>
internal sealed class WarmthCells(Rehearsal? atHome)
{
    private readonly Dictionary<(string Part, string Line), Temperature> mixed = Mixed(atHome);

    /// <summary>Null where it is not known: a part that no step mixes in.</summary>
    public Temperature? Of(string part, Line line) => line.Warmth switch
    {
        { Stated: { } stated } => stated,
        _ when mixed.TryGetValue((part, line.Id), out var known) => known,
        _ when line.Uses is not null || atHome is null => null,
        { Kind: WarmthKind.Boiling } => atHome.Boils,
        { Kind: WarmthKind.Fridge } => atHome.Kitchen.Fridge,
        { Kind: WarmthKind.Tap } => atHome.Kitchen.Tap,
        _ => atHome.Kitchen.Shelf,
    };

    private static Dictionary<(string, string), Temperature> Mixed(Rehearsal? atHome)
    {
        var mixed = new Dictionary<(string, string), Temperature>();
        foreach (var step in atHome?.Steps.Where(step => step.Kind == StepKind.Mix) ?? [])
        {
            foreach (var share in atHome!.HeatOf(step.Id)?.Shares ?? [])
            {
                if (share is { Line: { } line, GoesIn: { } warmth } and not { Giver: HeatGiver.Ice })
                {
                    mixed[(step.Component, line)] = warmth;
                }
            }
        }

        return mixed;
    }
}
