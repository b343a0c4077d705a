namespace Doughwright.Engine.Cases.Kinds;

/// <summary>What the temperature of an oven means in a case.</summary>
internal enum OvenAir
{
    /// <summary>The air around the piece, as it was measured.</summary>
    Measured,

    /// <summary>The dial of an oven with a fan, taken as a rehearsal takes it.</summary>
    Fan,

    /// <summary>The dial of an oven without one.</summary>
    Static,
}
