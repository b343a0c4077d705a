using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

/// <summary>
/// The dough of the potato rolls, by hand: true water 67.8 %, salt 1.75, all sugar 8.2, 3.03 % of fresh-equivalent yeast.
/// </summary>
internal static class RollDough
{
    public static DoughMatter Matter { get; } = new()
    {
        Flour = Mass.FromGrams(400),
        Water = Mass.FromGrams(271.2),
        Salt = Mass.FromGrams(7),
        Sugar = Mass.FromGrams(32.8),
        FreshYeast = Mass.FromGrams(12.12),
        Fat = Mass.FromGrams(52),
        OtherSolids = Mass.FromGrams(40),
    };

    public static RiseDough Of(RiseParameters parameters) => RiseDough.Of(Matter, parameters);
}
