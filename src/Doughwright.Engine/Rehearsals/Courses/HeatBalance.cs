using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>Where the warmth of a mixed dough comes from and goes to. The likely lane.</summary>
/// <param name="Step">Id of the mix.</param>
/// <param name="Component">Id of the part that is mixed.</param>
/// <param name="Mixed">Temperature after mixing: that of the rehearsal.</param>
/// <param name="Shares">In the order they are added, then work, vessel and air. Their heat adds up to zero within 1e-6 of the largest.</param>
public sealed record HeatBalance(string Step, string Component, Temperature Mixed, IReadOnlyList<HeatShare> Shares);

/// <summary>One giver or taker of heat.</summary>
/// <param name="Line">Id of the line; null for work, vessel and air.</param>
/// <param name="Mass">Null for work and air.</param>
/// <param name="KilojoulesPerKelvin">Its mean heat capacity on the way to the mixed temperature, melting included; null for work and air.</param>
/// <param name="GoesIn">How warm it goes in; null for work.</param>
/// <param name="Kilojoules">What it gives, down or up to the mixed temperature; negative when it takes.</param>
/// <param name="IsFree">Whether it is one of the lines whose warmth was asked for.</param>
public sealed record HeatShare(HeatGiver Giver, string? Line, Mass? Mass, double? KilojoulesPerKelvin, Temperature? GoesIn, double Kilojoules, bool IsFree);

/// <summary>What gives or takes heat in a bowl.</summary>
public enum HeatGiver
{
    /// <summary>An ingredient that goes straight in.</summary>
    Ingredient,

    /// <summary>A part made beforehand.</summary>
    Part,

    /// <summary>The part of the water that goes in as ice, its melting included.</summary>
    Ice,

    /// <summary>Mixing and handling.</summary>
    Work,

    Vessel,

    Air,
}
