using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Asking;

/// <summary>What a question comes to for one recipe.</summary>
/// <param name="Accepted">The question without what was refused.</param>
/// <param name="Request">For the engine; its kitchen is null at home.</param>
/// <param name="Kitchen">Where the recipe is made: the request's kitchen, or home.</param>
/// <param name="Named">Name of the kitchen's file; null when none was asked for.</param>
/// <param name="KitchenFindings">What is wrong or risky in the text of that kitchen.</param>
/// <param name="CommandLine">The same asked on the command line.</param>
internal sealed record Understood(
    Question Accepted,
    Request Request,
    Kitchen Kitchen,
    string? Named,
    IReadOnlyList<Refusal> Refusals,
    IReadOnlyList<Finding> KitchenFindings,
    string CommandLine);
