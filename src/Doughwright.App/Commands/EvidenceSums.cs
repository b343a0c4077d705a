namespace Doughwright.App.Commands;

/// <summary>What a run of cases comes to. Only evidence counts as in or out.</summary>
/// <param name="In">Series with every point in its tolerance.</param>
/// <param name="Out">Series with a point that is not.</param>
/// <param name="PointsInRange">Measured figures that lie in the range of the answer, of those whose answer has one.</param>
/// <param name="Fitted">Series to which a parameter of ours was fitted.</param>
/// <param name="Formula">Series that were worked out from a formula.</param>
/// <param name="NotRun">Series that no model answers.</param>
internal sealed record EvidenceSums(int In, int Out, int PointsInRange, int PointsWithRange, int Fitted, int Formula, int NotRun)
{
    public static EvidenceSums Of(EvidenceRun run)
    {
        var all = run.Series.ToArray();
        var ran = all.Where(held => held.Result.Within is not null).ToArray();
        var evidence = ran.Where(held => held.Case.IsEvidence).Select(held => held.Result).ToArray();
        return new(
            evidence.Count(result => result.Within == true),
            evidence.Count(result => result.Within == false),
            evidence.Sum(result => result.PointsInRange),
            evidence.Sum(result => result.PointsWithRange),
            ran.Count(held => held.Case.Fitted),
            ran.Count(held => !held.Case.Fitted && !held.Case.IsEvidence),
            all.Length - ran.Length);
    }
}
