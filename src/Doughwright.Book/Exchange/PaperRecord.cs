namespace Doughwright.Book.Exchange;

/// <summary>Everything about a paper but its texts, named so that it means the same in every book: states by their number within the paper, from 1.</summary>
/// <param name="TakenAway">When it was; null when it was not.</param>
internal sealed record PaperRecord(string Uid, string Sort, string Name, int Now, (string Uid, int State)? GrownFrom, string? TakenAway)
{
    public required IReadOnlyList<StateRecord> States { get; init; }

    public required IReadOnlyList<StepBackRecord> StepsBack { get; init; }

    public required IReadOnlyList<KeptRecord> Kept { get; init; }

    public required IReadOnlyList<SaidRecord> Said { get; init; }

    public required IReadOnlyList<PhotoOfRecord> Photos { get; init; }

    /// <summary>Whether it is the same paper to the last word.</summary>
    public bool IsLike(PaperRecord other) =>
        (Uid, Sort, Name, Now, GrownFrom, TakenAway) == (other.Uid, other.Sort, other.Name, other.Now, other.GrownFrom, other.TakenAway)
        && States.SequenceEqual(other.States)
        && StepsBack.SequenceEqual(other.StepsBack)
        && Kept.SequenceEqual(other.Kept)
        && Kept.Zip(other.Kept).All(both => both.First.Corrections.SequenceEqual(both.Second.Corrections))
        && Said.SequenceEqual(other.Said)
        && Photos.SequenceEqual(other.Photos);
}

internal sealed record StateRecord(int Number, int? Before, string Hash, string At, string Did);

internal sealed record StepBackRecord(int State, int Onward);

internal sealed record KeptRecord(int State, string At, string Name, string Note, bool Published)
{
    public IReadOnlyList<CorrectionRecord> Corrections { get; init; } = [];

    // A list is equal only to itself, so corrections are compared by whoever compares.
    public bool Equals(KeptRecord? other) => other is not null && (State, At, Name, Note, Published) == (other.State, other.At, other.Name, other.Note, other.Published);

    public override int GetHashCode() => HashCode.Combine(State, At, Name);
}

internal sealed record CorrectionRecord(string At, string Text, string Place, string? Done);

internal sealed record SaidRecord(string At, string What, string Value);

internal sealed record PhotoOfRecord(string Hash, string At, string Words);
