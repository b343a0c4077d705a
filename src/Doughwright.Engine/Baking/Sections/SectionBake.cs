namespace Doughwright.Engine.Baking.Sections;

/// <summary>Bakes a piece over a section through it, and tells how it went.</summary>
internal static class SectionBake
{
    /// <summary>The first step in seconds; each next one is longer by a quarter until the whole step is reached.</summary>
    private const double Opening = 0.5;

    private const double Growth = 1.25;

    /// <summary>The cell under a face is so small a part of the way to the core.</summary>
    private const double CrustShare = 28;

    /// <summary>The longest step in seconds per metre of the way to the core: a small roll changes faster than a loaf.</summary>
    private const double StepPerMetre = 800;

    /// <summary>So many steps are enough for any bake.</summary>
    private const double MostSteps = 150;

    /// <summary>A step that cannot be solved is halved down to this many seconds before the bake is given up.</summary>
    private const double ShortestStep = 1e-3;

    /// <summary>The grid of every bake: the core within 0.5 K of a fine one.</summary>
    public static CylinderGrid WorkingGrid(BakingPiece piece) =>
        new(piece.Radius.Metres, piece.Height.Metres, 18, 28, WayToCore(piece) / CrustShare);

    /// <summary>The longest step of a bake on that grid, in seconds.</summary>
    /// <param name="seconds">How long it is to bake, more or less: what is thin is warm long before it is done, and needs no more steps for that.</param>
    public static double WorkingStep(BakingPiece piece, double seconds) => Math.Max(StepPerMetre * WayToCore(piece), seconds / MostSteps);

    /// <summary>Each step of a bake, from the moment the piece goes in.</summary>
    /// <param name="seconds">How long it bakes.</param>
    /// <param name="step">The longest step in seconds.</param>
    /// <exception cref="SectionUnsolvedException">The balances could not be solved even over the shortest step.</exception>
    public static IEnumerable<SectionMoment> Run(SectionMarch march, double seconds, double step, CancellationToken stop = default)
    {
        var height = march.Piece.Height.Metres / 2;
        yield return Moment(march, height);
        for (var next = Math.Min(Opening, step); march.Seconds < seconds - 1e-9;)
        {
            stop.ThrowIfCancellationRequested();
            var length = Math.Min(next, seconds - march.Seconds);
            if (march.Step(length))
            {
                next = Math.Min(step, next * Growth);
                yield return Moment(march, height);
            }
            else if (length / 2 > ShortestStep)
            {
                next = length / 2;
            }
            else
            {
                throw new SectionUnsolvedException(march.Seconds);
            }
        }
    }

    internal static double WayToCore(BakingPiece piece) => Math.Min(piece.Radius.Metres, piece.Height.Metres / 2);

    private static SectionMoment Moment(SectionMarch march, double height) =>
        new(march.Seconds, march.CoreCelsius(height), march.SideCelsius, march.TopCelsius, march.BottomCelsius, march.MeanWater, march.Loss);
}
