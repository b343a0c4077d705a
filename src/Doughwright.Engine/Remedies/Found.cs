using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Remedies;

/// <summary>A finding with the place of the recipe it is about.</summary>
internal sealed class Found(Finding finding, Recipe recipe)
{
    private readonly string[] place = finding.Place.Split('.');

    public Recipe Recipe => recipe;

    public Step? Step => place is ["steps", var id, ..] ? recipe.FindStep(id) : null;

    public Component? Part => place is ["parts", var id, ..] ? recipe.FindComponent(id) : null;

    public Line? Line => place is ["parts", _, var id, ..] ? Part?.Lines.FirstOrDefault(line => line.Id == id) : null;

    /// <summary>The dough that no other part uses.</summary>
    public Component? FinalDough
    {
        get
        {
            var used = recipe.Components.SelectMany(part => part.Lines).Select(line => line.Uses).ToHashSet();
            return recipe.Components.LastOrDefault(part => part.Kind == ComponentKind.Dough && !used.Contains(part.Id));
        }
    }

    public T? Value<T>(string name) where T : struct => finding.Arguments.GetValueOrDefault(name) is T value ? value : null;

    public string? Word(string name) => finding.Arguments.GetValueOrDefault(name) as string is { Length: > 0 } word ? word : null;

    /// <summary>A mass as the kitchen's scale shows it, never less than its smallest step.</summary>
    public Mass OnScale(Mass mass)
    {
        var scale = recipe.Home.Scale;
        return scale <= Mass.Zero ? mass : scale * Math.Max(1, Math.Round(mass / scale, MidpointRounding.AwayFromZero));
    }

    public Remedy Remedy(string verb, Func<Recipe, Recipe> change, params (string Name, object Value)[] arguments) => new()
    {
        FindingId = finding.Id,
        Verb = verb,
        Change = change,
        Arguments = arguments.ToDictionary(argument => argument.Name, argument => argument.Value),
    };
}
