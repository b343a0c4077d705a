using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>The kitchen as a sentence, and the kitchens there are to pick from.</summary>
/// <param name="Picks">Home first.</param>
/// <param name="Note">What no field can say: air that changes; nothing when all is said.</param>
/// <param name="Before">What is asked now, for a form that is sent without script.</param>
public sealed record KitchenView(IReadOnlyList<KitchenPick> Picks, Told Sentence, Told Note, IReadOnlyList<Refusal> Refusals, string Before)
{
    /// <summary>Address of the page that keeps this kitchen by a name; null when it is one that has a name already.</summary>
    public string? Keep { get; private init; }

    /// <param name="kitchens">Kitchens of the book.</param>
    internal static KitchenView Of(Figures figures, IReadOnlyList<KitchenOnShelf> kitchens)
    {
        var state = figures.State;
        return new(Picking(figures, kitchens), Saying(figures), Changing(figures), state.Setting.Refusals, state.Setting.Question.Query())
        {
            Keep = Question.OfKitchen.Any(state.Setting.Question.Has)
                ? $"/recipes/{Uri.EscapeDataString(state.File.Name)}/kitchen{state.Setting.Question.Query()}"
                : null,
        };
    }

    private static List<KitchenPick> Picking(Figures figures, IReadOnlyList<KitchenOnShelf> kitchens)
    {
        var voice = figures.Voice;
        var home = figures.State.Recipe.Home;
        var named = figures.State.Setting.Read.Named;
        var picks = new List<KitchenPick>
        {
            new(null, voice.Say(home.Name.Length > 0 ? "recipe.home" : "recipe.home-unnamed", ("kitchen", home.Name)), named is null),
        };
        picks.AddRange(
            from other in kitchens
            where other.Kitchen is not null && (other.Kitchen != home || other.Name == named)
            select new KitchenPick(other.Name, other.Shown, other.Name == named));
        return figures.State.Setting.Read.Accepted.ChangesKitchen
            ? [.. picks.Select(pick => pick.IsPicked ? pick with { Title = voice.Say("kitchen-changed", ("kitchen", pick.Title)) } : pick)]
            : picks;
    }

    private static Told Saying(Figures figures)
    {
        var (state, voice) = (figures.State, figures.Voice);
        var kitchen = state.Setting.Read.Kitchen;
        var recipe = state.Recipe;
        var make = recipe.Make is { } made
            ? Told.Say(voice, "recipe.we-make", ("pieces", Show.Number(made.Pieces, 0)), ("what", made.What), ("piece", made.PieceMass))
            : Told.Nothing;
        var sentences = new List<Told>
        {
            Told.Say(
                voice,
                "recipe.room",
                ("air", Field(Question.Air, state, voice)),
                ("altitude", Field(Question.Altitude, state, voice) with { Wide = true })),
            Told.Say(
                voice,
                HasFlour(figures) ? "recipe.flour" : "recipe.shelf",
                ("shelf", Field(Question.Ingredients, state, voice)),
                ("tap", Field(Question.Tap, state, voice))),
        };
        if (UsesFridge(recipe) || state.Setting.Question.Has(Question.Fridge))
        {
            sentences.Add(Told.Say(voice, "recipe.fridge", ("fridge", Field(Question.Fridge, state, voice))));
        }

        if (kitchen.ProofingPlace is not null)
        {
            sentences.Add(Told.Say(voice, "recipe.proofing", ("proof", Field(Question.Proof, state, voice))));
        }

        var oven = Field(Question.Oven, Lower(kitchen.Oven), state, voice) with
        {
            Unit = "",
            Choices = [.. Enum.GetValues<OvenMode>().Select(mode => new Telling.Choice(Lower(mode), voice.Oven(mode)))],
        };
        sentences.Add(Told.Say(voice, "recipe.oven", ("oven", oven), ("make", make)));
        return Told.Join(sentences, " ");
    }

    /// <summary>The air of a kitchen that follows the clock, for the day that a person looks ahead.</summary>
    private static Told Changing(Figures figures)
    {
        var voice = figures.Voice;
        var changes = figures.Here.Kitchen.Air.Knots.Where(knot => knot.From > Duration.Zero && knot.From <= Duration.FromHours(24))
            .Select(knot => voice.Say("air-change", ("air", knot.Air), ("after", knot.From)))
            .ToArray();
        return changes.Length == 0 ? Told.Nothing : Told.Say(voice, "kitchen-air-changes", ("changes", changes));
    }

    private static Field Field(string option, DeskState state, Publishing.Wording.Voice voice) =>
        Field(option, FieldUnit.Number(state.Setting.Read.Kitchen, option, state.Measures), state, voice);

    private static Field Field(string option, string value, DeskState state, Publishing.Wording.Voice voice)
    {
        var refusal = state.Setting.RefusalOf(option);
        var text = (refusal is null ? null : FieldUnit.Bare(option, refusal.Typed, state.Measures)) ?? value;
        return new(option, voice.Words[$"recipe.field.{option}"], text, FieldUnit.Shown(option, state.Measures)) { Refusal = refusal };
    }

    private static bool HasFlour(Figures figures) =>
        figures.Here.Formula.Components.Any(component => component.Lines.Any(line => line.Role == Role.Flour));

    private static bool UsesFridge(Recipe recipe) =>
        recipe.Steps.Any(step => step.Where == Where.Fridge)
        || recipe.Components.Any(component => component.Lines.Any(line => line.Warmth.Kind == WarmthKind.Fridge));

    private static string Lower(OvenMode mode) => mode.ToString().ToLowerInvariant();
}

/// <summary>A kitchen to rehearse in.</summary>
/// <param name="Name">Name of its file; null is home.</param>
public sealed record KitchenPick(string? Name, string Title, bool IsPicked);
