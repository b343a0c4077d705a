using System.Collections.Immutable;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// What a dough went through after mixing and before anything tells how fast it is: rests, a night in the fridge. It rose meanwhile, and the bulk
/// begins with that.
/// </summary>
/// <param name="Spells">In order of time; at least one.</param>
internal sealed record RisePast(ImmutableArray<RisePast.Spell> Spells)
{
    /// <summary>One step of it.</summary>
    /// <param name="Step">Id of the step.</param>
    /// <param name="Keeps">Share of the gas in the bubbles that its end leaves, per lane; null where nothing is pressed out.</param>
    internal sealed record Spell(string Step, RiseHistory History, double[] Minutes, double[]? Keeps);

    /// <summary>How warm the dough was after mixing.</summary>
    public double[] StartCelsius => Spells[0].History.StartCelsius;

    public static RisePast Of(RisePast? before, Spell next) => new(before is null ? [next] : before.Spells.Add(next));

    /// <summary>The same with the rates of a dough along it, for one that goes through it many times.</summary>
    public RisePast WithRates(RiseState dough) => new([.. Spells.Select(spell => spell with { History = dough.WithRates(spell.History) })]);

    /// <summary>Takes a dough fresh from the mix through all of it.</summary>
    public void Take(RiseState state)
    {
        foreach (var spell in Spells)
            Take(state, spell);
    }

    /// <summary>As it stood before a step, in every lane.</summary>
    public void TakeUntil(RiseState state, string step)
    {
        foreach (var spell in Spells.TakeWhile(spell => spell.Step != step))
            Take(state, spell);
    }

    private static void Take(RiseState state, Spell spell)
    {
        state.Begin(RiseStage.ForMinutes(spell.Minutes));
        state.Advance(spell.History);
        if (spell.Keeps is { } keeps)
            state.PressOut(keeps);
    }
}
