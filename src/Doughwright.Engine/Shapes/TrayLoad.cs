using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Shapes;

/// <summary>How pieces lie on a tray when they are proofed.</summary>
internal enum Lying
{
    /// <summary>Air between all of them.</summary>
    Apart,

    /// <summary>They grow together, which some recipes mean them to.</summary>
    Touching,

    /// <summary>They have not room enough.</summary>
    TooMany,
}

/// <summary>How many pieces a tray takes.</summary>
/// <param name="Apart">With a gap all round.</param>
/// <param name="Touching">Side by side.</param>
internal readonly record struct TrayLoad(int Apart, int Touching)
{
    /// <summary>What pieces are laid apart by so that they bake apart. Source: piece-proportions.</summary>
    public static Length Gap { get; } = Length.FromMillimetres(20);

    /// <summary>In rows along both sides of the tray, the better way round; null when its floor is not known.</summary>
    /// <param name="proofed">The piece at its largest.</param>
    public static TrayLoad? Of(PieceForm proofed, VesselSize tray)
    {
        if (tray is not { Long: { } length, Wide: { } width })
        {
            return null;
        }

        int Best(Length gap) => Math.Max(
            Rows(length, proofed.Long + gap) * Rows(width, proofed.Wide + gap), Rows(length, proofed.Wide + gap) * Rows(width, proofed.Long + gap));
        return new(Best(Gap), Best(Length.Zero));
    }

    public Lying Of(int pieces) => pieces <= Apart ? Lying.Apart : pieces <= Touching ? Lying.Touching : Lying.TooMany;

    private static int Rows(Length room, Length each) => (int)Math.Floor((room.Metres / each.Metres) + 1e-9);
}
