namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>A part that is made apart, on its way to what it joins.</summary>
/// <param name="Joins">The step that takes it in; null when nothing does, or when that step has no place in time.</param>
/// <param name="Into">The strand it goes into; null for the dough on the bench.</param>
internal sealed record PlannedStrand(Track Track, Manner Manner, PlannedStep? Joins, Track? Into)
{
    public string Component => Track.Strand.Component;

    public double Start => Track.Start;

    /// <summary>When it is taken up.</summary>
    public double JoinStart => Joins?.Start ?? Track.End;

    /// <summary>When nothing of it is seen any more.</summary>
    public double JoinEnd => Joins?.EndOrStart ?? Track.End;
}
