using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>A quantity of matter on its way through the run: what it is, how warm it is, how far it has risen.</summary>
internal sealed record Portion
{
    public required Mass Mass { get; init; }

    public required Composition Composition { get; init; }

    /// <summary>Heat capacity of all of it without melting, in J/K.</summary>
    public required double JoulesPerKelvin { get; init; }

    /// <summary>Fat in it that melts between fridge and room.</summary>
    public required Mass MeltingFat { get; init; }

    /// <summary>What of its mass was laid in or on as a filling: it holds no gas and does not rise.</summary>
    public Mass LaidIn { get; init; } = Mass.Zero;

    /// <summary>Mean temperature in every lane; null when it cannot be computed.</summary>
    public PerLane? Celsius { get; init; }

    /// <summary>Whether yeast that is alive went into its bowl.</summary>
    public bool YeastLives { get; init; }

    /// <summary>How warm the mix was that killed all of its yeast; null while some is alive or it never held any.</summary>
    public Temperature? YeastDied { get; init; }

    /// <summary>Yeast and gas; null when it does not rise.</summary>
    public DoughState? Dough { get; init; }

    /// <summary>What a dough went through after mixing while nothing told how fast it rises; null when that is nothing.</summary>
    public RisePast? Past { get; init; }

    /// <summary>
    /// The same, divided as the recipe makes it, where no step divides it: a proof and a bake are of pieces even when nobody wrote the shaping.
    /// </summary>
    public Portion Divided(Stage stage, string component) =>
        Pieces == 1 && stage.Recipe.Make is { Pieces: > 1 } make && !stage.Recipe.Steps.Any(step => step.Kind == Recipes.StepKind.Shape && step.Component == component)
            ? this with { Pieces = make.Pieces }
            : this;

    /// <summary>Volume of all of it over its volume without gas, when the dough in it measures so many times its own.</summary>
    public double Swollen(double growth) => 1 + ((Mass - LaidIn) / Mass * (growth - 1));

    /// <summary>What it lies in, as warm as itself; null while no step said so.</summary>
    public Kitchens.Vessel? Vessel { get; init; }

    /// <summary>What it was shaped into; null before, and where nothing tells.</summary>
    public PieceShape? Shape { get; init; }

    /// <summary>Whether its pieces lie so close on their tray that their sides touch from the shaping on.</summary>
    public bool PiecesTouch { get; init; }

    /// <summary>Whether it was baked.</summary>
    public bool IsBaked { get; init; }

    /// <summary>How it came out of the oven, and where it has stood since; null before, and where that is not computed.</summary>
    public Steps.HotLoaf? Hot { get; init; }

    /// <summary>Pieces it has been divided into; 1 before.</summary>
    public int Pieces { get; init; } = 1;
}
