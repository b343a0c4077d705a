using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>Water of which a part goes in as ice. The run counts it as one colder water that holds as little heat; what a person sees is ice and water from the tap.</summary>
/// <param name="Line">Id of the water's line.</param>
/// <param name="Ice">How much of it is ice.</param>
internal sealed record IceInBowl(string Line, Mass Ice, Temperature Tap)
{
    public static Temperature Melts { get; } = Temperature.FromCelsius(0);

    /// <summary>Null when no ice is called for.</summary>
    public static IceInBowl? Of(Rehearsal rehearsal) => rehearsal.Solutions is [{ Ice: { } ice, Lines: [var line] }, ..]
        ? new(line, ice.Likely, rehearsal.Kitchen.Tap)
        : null;

    /// <summary>The balance with water and ice apart. They take together what the one colder water took.</summary>
    public HeatBalance Apart(HeatBalance balance) => balance with
    {
        Shares = [.. balance.Shares.SelectMany(share => share is { IsFree: true, Mass: { } mass, KilojoulesPerKelvin: { } capacity } && share.Line == Line
            ? Apart(share, mass, capacity, balance.Mixed)
            : [share])],
    };

    private HeatShare[] Apart(HeatShare share, Mass mass, double capacity, Temperature mixed)
    {
        var rest = mass - Ice;
        var water = share with
        {
            Mass = rest,
            KilojoulesPerKelvin = capacity * (rest / mass),
            GoesIn = Tap,
            Kilojoules = capacity * (rest / mass) * (Tap - mixed).Kelvins,
        };
        var melted = share.Kilojoules - water.Kilojoules;
        return [water, new(HeatGiver.Ice, Line, Ice, melted / (Melts - mixed).Kelvins, Melts, melted, true)];
    }
}
