namespace Doughwright.Engine.Ingredients;

/// <summary>Regions as they stand in the larder's tables, and the words people put before a pack: "US stick", "European large".</summary>
internal static class RegionCodes
{
    private static readonly (string Code, Region Region, string[] Words)[] All =
    [
        ("GB", Region.Britain, ["british", "uk", "gb"]),
        ("US", Region.UnitedStates, ["us", "american", "usa"]),
        ("AU", Region.Australia, ["australian", "au"]),
        ("DE", Region.Germany, ["german", "de"]),
        ("AT", Region.Austria, ["austrian", "at"]),
        ("FR", Region.France, ["french", "fr"]),
        ("IT", Region.Italy, ["italian", "it"]),
    ];

    private static readonly string[] European = ["european", "eu"];

    /// <summary>Every code, in the order in which it is offered.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. All.Select(each => each.Code)];

    /// <summary>The codes of the regions in which something is clear, with commas between; empty when a region has been said already.</summary>
    public static string Deciding(Larder larder, Func<Larder, bool> isClear) =>
        larder.Region is null ? string.Join(", ", All.Where(each => isClear(larder.In(each.Region))).Select(each => each.Code)) : "";

    /// <exception cref="FormatException">No region has this code: the table is broken.</exception>
    public static Region[] Read(string cell) =>
    [
        .. cell.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(code =>
            All.Where(each => each.Code == code).Select(each => (Region?)each.Region).FirstOrDefault()
                ?? throw new FormatException($"No region has the code {code}.")),
    ];

    public static string CodeOf(Region region) => All.First(each => each.Region == region).Code;

    /// <summary>The region with this code in any case: "gb"; null when there is none.</summary>
    public static Region? WithCode(string code) =>
        All.Where(each => each.Code.Equals(code, StringComparison.OrdinalIgnoreCase)).Select(each => (Region?)each.Region).FirstOrDefault();

    /// <summary>What stands before the unit of a pack that only these regions have; empty when all have it.</summary>
    public static string Before(IReadOnlyList<Region> regions) => regions switch
    {
        [] => "",
        [Region.UnitedStates] => "US ",
        [Region.Britain] => "British ",
        [Region.Australia] => "Australian ",
        [Region.Germany, ..] when !regions.Contains(Region.France) && !regions.Contains(Region.Italy) => "German ",
        [Region.Austria] => "Austrian ",
        [Region.France] => "French ",
        [Region.Italy] => "Italian ",
        _ => "European ",
    };

    /// <summary>Takes a region word off the front: "us stick" leaves "stick". Null when none stands there.</summary>
    public static Region[]? Take(ref string[] words)
    {
        if (words.Length < 2)
        {
            return null;
        }

        var first = words[0];
        var named = All.Where(each => each.Words.Contains(first)).Select(each => each.Region).ToArray();
        if (named.Length == 0 && European.Contains(first))
        {
            named = [Region.Britain, Region.Germany, Region.Austria, Region.France, Region.Italy];
        }

        if (named.Length == 0)
        {
            return null;
        }

        words = words[1..];
        return named;
    }
}
