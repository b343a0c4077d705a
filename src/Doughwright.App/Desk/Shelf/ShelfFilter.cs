using Doughwright.App.Desk.Standing;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Which recipes the shelf shows: those of a standing, a family, a season; all of them where nothing is asked.</summary>
internal sealed record ShelfFilter(string? Standing, string? Family, string? Season)
{
    private const string StandingName = "show";
    private const string FamilyName = "family";
    private const string SeasonName = "season";

    public bool IsAll => this is { Standing: null, Family: null, Season: null };

    /// <param name="value">The value of a name in the address, or null.</param>
    public static ShelfFilter Read(Func<string, string?> value) => new(Given(value(StandingName)), Given(value(FamilyName)), Given(value(SeasonName)));

    /// <summary>What is asked, as it stands in an address.</summary>
    public IEnumerable<(string Name, string Value)> Asked =>
        new[] { (StandingName, Standing), (FamilyName, Family), (SeasonName, Season) }.Where(each => each.Item2 is not null).Select(each => (each.Item1, each.Item2!));

    /// <param name="said">Of a recipe; null when nothing is said of it.</param>
    public bool Shows(IReadOnlyDictionary<Saying, string>? said) =>
        Agrees(Standing, said?.GetValueOrDefault(Saying.Standing)) && Agrees(Family, said?.GetValueOrDefault(Saying.Family)) && Agrees(Season, said?.GetValueOrDefault(Saying.Season));

    /// <summary>What else can be asked, each with the address that asks it; only what some recipe has.</summary>
    /// <param name="address">Of the shelf as it is shown, without what is asked here.</param>
    public static IReadOnlyList<FilterLink> Links(IEnumerable<IReadOnlyDictionary<Saying, string>> said, string address, Voice voice)
    {
        var all = said.ToArray();
        return
        [
            .. Standings.All.Where(known => all.Any(each => each.GetValueOrDefault(Saying.Standing) == known)).Select(known => Link(StandingName, known, Standings.Name(known, voice), address)),
            .. Known(all, Saying.Family).Select(known => Link(FamilyName, known, known, address)),
            .. Known(all, Saying.Season).Select(known => Link(SeasonName, known, known, address)),
        ];
    }

    /// <summary>What is asked, in words.</summary>
    public string Words(Voice voice) =>
        voice.List([.. new[] { Standing is { } known && Standings.All.Contains(known) ? Standings.Name(known, voice) : Standing, Family, Season }.OfType<string>()]);

    private static FilterLink Link(string name, string value, string words, string address) => new(words, QueryHelpers.AddQueryString(address, name, value));

    private static IEnumerable<string> Known(IEnumerable<IReadOnlyDictionary<Saying, string>> said, Saying what) =>
        said.Select(each => each.GetValueOrDefault(what)).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase);

    private static bool Agrees(string? asked, string? said) => asked is null || string.Equals(asked, said, StringComparison.OrdinalIgnoreCase);

    private static string? Given(string? typed) => string.IsNullOrWhiteSpace(typed) ? null : typed.Trim();
}

/// <summary>A word of the line that says what is shown, and where it leads.</summary>
internal sealed record FilterLink(string Words, string Address);
