namespace Doughwright.Engine.Heat;

/// <summary>What is written down of a conduction run, in °C at the end of each step; an empty span leaves that out.</summary>
/// <param name="mean">Volume mean, at [step × lanes + lane], as are middle and surface.</param>
/// <param name="shells">Mean of each shell of the grid, at [(step × shells + shell) × lanes + lane].</param>
internal readonly ref struct ConductionRecord(Span<double> mean, Span<double> centre, Span<double> surface, Span<double> shells)
{
    public readonly Span<double> Mean = mean;
    public readonly Span<double> Centre = centre;
    public readonly Span<double> Surface = surface;
    public readonly Span<double> Shells = shells;

    public bool HasRoomFor(int values, int shells) =>
        Holds(Mean, values) && Holds(Centre, values) && Holds(Surface, values) && Holds(Shells, values * shells);

    private static bool Holds(Span<double> record, int values) => record.IsEmpty || record.Length >= values;
}
