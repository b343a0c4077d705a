namespace Doughwright.Book.Exchange;

/// <summary>Something that keeps an export from being taken in.</summary>
/// <param name="Kind">Key of its words.</param>
/// <param name="Arguments">What the words tell.</param>
public sealed record ExchangeFault(string Kind, params IReadOnlyList<(string Name, object? Value)> Arguments);

/// <summary>What was found wrong in an export, all of it; a hostile one has no end, so only so much is told and the rest counted.</summary>
internal sealed class ExchangeFaults
{
    private const int MostTold = 40;

    private readonly List<ExchangeFault> told = [];
    private int more;

    public bool Any => told.Count > 0;

    public IReadOnlyList<ExchangeFault> All => more == 0 ? told : [.. told, new("import-more", ("count", more))];

    public void Add(string kind, params IReadOnlyList<(string Name, object? Value)> arguments)
    {
        if (told.Count < MostTold)
        {
            told.Add(new(kind, arguments));
        }
        else
        {
            more++;
        }
    }
}
