using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Sections;

/// <summary>The slab under a piece, and the oven around it.</summary>
/// <param name="Oven">°C after so many seconds.</param>
internal sealed record UnderHearth(OvenHearth Slab, Func<double, double> Oven)
{
    /// <summary>The same slab where the oven gives so many times the heat.</summary>
    public UnderHearth Scaled(double factor) => this with { Slab = Slab with { Contact = factor * Slab.Contact } };

    /// <summary>One bake on it.</summary>
    internal sealed class Run
    {
        private readonly HearthRun<Lane1> slab = new();
        private readonly UnderHearth under;
        private double ahead;

        public Run(UnderHearth under)
        {
            this.under = under;
            slab.Begin(under.Slab, Lane1.Of(under.Oven(0)), Lane1.Of(1));
            Face = new(0, slab.Conducts.Value, _ => ahead, _ => ahead, 0, OvenFace.KitchenVapour);
        }

        /// <summary>What the under side of the piece meets.</summary>
        public OvenFace Face { get; }

        /// <summary>Looks ahead to the end of a step that is so many times as long as the one before.</summary>
        public void Look(double ratio) => ahead = slab.Ahead(Lane1.Of(ratio)).Value;

        /// <param name="surface">Mean of the under side, °C.</param>
        /// <param name="end">Of the step, s.</param>
        public void Advance(double surface, double end, double length, double ratio) => slab.Advance(Lane1.Of(surface), Lane1.Of(under.Oven(end)), length, ratio);
    }
}
