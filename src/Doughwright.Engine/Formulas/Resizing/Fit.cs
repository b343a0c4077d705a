using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>What the dough must fit into.</summary>
public enum FitKind
{
    Bowl,
    Machine,
    Tin,
    Tray,
    Oven,
}

/// <summary>Whether it fits.</summary>
public enum FitVerdict
{
    Fits,

    /// <summary>Not at once, or not in what the recipe names.</summary>
    TooMuch,

    /// <summary>It cannot be told; <see cref="Fit"/> says what can.</summary>
    CannotBeTold,
}

/// <summary>Whether the new size fits one thing of the kitchen. What does not belong to its kind is null.</summary>
/// <param name="Step">Id of the step it was looked at for.</param>
/// <param name="Name">Name of that step.</param>
public sealed record Fit(FitKind Kind, FitVerdict Verdict, string Step, string Name)
{
    /// <summary>What it held in the old size: dough of a bowl or of one tin, flour of a machine.</summary>
    public Mass? HeldBefore { get; init; }

    /// <summary>What it is to hold now.</summary>
    public Mass? HoldsNow { get; init; }

    /// <summary>Room that the risen dough takes.</summary>
    public Volume? Needs { get; init; }

    /// <summary>Room that the vessel has.</summary>
    public Volume? Has { get; init; }

    /// <summary>Tins, or trays, in all.</summary>
    public int? Needed { get; init; }

    /// <summary>Pieces that lay on one tray in the old size; of the new weight, where that differs.</summary>
    public int? PerTray { get; init; }

    /// <summary>Trays there are.</summary>
    public int? There { get; init; }

    /// <summary>Times the oven must be filled.</summary>
    public int? Loads { get; init; }
}
