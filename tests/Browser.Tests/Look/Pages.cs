using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>Every kind of page the desk has, at the states that differ in what they show, and readers' pages.</summary>
internal static class Pages
{
    public const string Shelf = "/";

    public const string Nothing = "/nothing-here";

    /// <summary>Readers' pages, one of them with everything that a page can show.</summary>
    public static readonly string[] Readers =
    [
        "reader:potato-rolls",
        "reader:hearth-loaf --measures us",
        "reader:tin-loaf --kitchen mountain",
        "reader:quayside-pan-bread",
        "reader:night-boat-rye --kitchen winter-cottage",
        "reader:hostile",
        "reader:three-rises",
    ];

    public static readonly string[] All =
    [
        Shelf,
        "/open",
        "/kitchens",
        "/recipes/potato-rolls/kitchen?kitchen=mountain&air=17C",
        "/recipes/potato-rolls",
        "/recipes/potato-rolls?kitchen=mountain&dough=26C&free=potato,scald",
        "/recipes/hearth-loaf?kitchen=winter-cottage&measures=us",
        "/recipes/tin-loaf?kitchen=summer&air=900C",
        "/recipes/pilot-ring?kitchen=summer",
        "/recipes/quayside-pan-bread?kitchen=mountain",
        "/recipes/night-boat-rye?kitchen=winter-cottage&measures=us",
        "/recipes/slipped-rolls",
        "/recipes/potato-rolls/kitchens?second=mountain",
        "/recipes/hearth-loaf/kitchens?second=summer&measures=us",
        "/recipes/potato-rolls/states",
        "/taken-off",
        "/recipes/potato-rolls/sides?right=tin-loaf&kitchen=mountain",
        "/recipes/pilot-ring/sides?left=99999&measures=us",
        "/recipes/potato-rolls/size?pieces=24",
        "/recipes/hearth-loaf/size?dough=501kg&measures=us",
        "/recipes/potato-rolls/swaps?replace=butter%3Dolive%20oil",
        "/recipes/pilot-ring/swaps?replace=egg%3D&replace=butter%3Doliv%20oyl&another=yes&measures=us",
        "/recipes/potato-rolls/page?kitchen=mountain",
        "/recipes/hearth-loaf/page?measures=us",
        "/recipes/potato-rolls/place?kitchen=mountain&step=bulk&to=26C",
        "/recipes/tin-loaf/place?kitchen=summer&step=bulk&to=900C&measures=us",
        "/recipes/potato-rolls/ready?kitchen=mountain&start=22:00&by=5:00",
        "/recipes/night-boat-rye/ready?kitchen=summer&start=late&by=7:00&measures=us",
        "/recipes/potato-rolls/write",
        "/recipes/hearth-loaf/write?measures=us",
        "/recipes/slipped-rolls/write",
        "/new",
        "/find?words=scald%20potato",
        "/recipes/potato-rolls/standing",
        "/notes",
        "/notes/scalding",
        "/notes/reading-a-proof?recipe=pilot-ring&measures=us",
        "/larder",
        "/larder?words=strong%20flour&measures=us",
        "/larder/butter-unsalted",
        "/larder/new?called=mill%20flour",
        "/kitchens/new",
        "/kitchens/mountain/change?measures=us",
        "/book?look=yes",
        Nothing,
        .. Readers,
    ];

    /// <summary>A page at every width, light and then dark, with everything opened.</summary>
    public static async IAsyncEnumerable<(Visit Visit, View View)> Looks(House house, string path)
    {
        foreach (var width in View.Widths)
        {
            var light = new View(width);
            await using var visit = await house.Visit(path, light);
            if (HasCircuit(path))
            {
                await visit.Settled();
            }

            await visit.OpenAll();
            yield return (visit, light);
            var dark = light with { Dark = true };
            await visit.Page.EmulateMediaAsync(new() { ColorScheme = dark.Scheme });
            yield return (visit, dark);
        }
    }

    /// <summary>Whether a page answers to what is set on it without being loaded again.</summary>
    public static bool HasCircuit(string path) => IsWritten(path)
        || (HasPictures(path) && !IsForReaders(path) && !path.Contains("/place?", StringComparison.Ordinal) && !path.Contains("/sides?", StringComparison.Ordinal));

    private static bool IsWritten(string path) => path.Contains("/write", StringComparison.Ordinal);

    /// <summary>Pages of one recipe that show no picture of their own: forms, frames, and questions that are refused.</summary>
    private static readonly string[] WithoutStrip = ["/states", "/standing", "/kitchen?", "/size?", "/swaps?", "/page?", "/ready?", "to=900C", "/write"];

    /// <summary>Whether a page must show lettering in pictures.</summary>
    public static bool HasPictures(string path) =>
        IsForReaders(path) || (path.StartsWith("/recipes/", StringComparison.Ordinal) && !WithoutStrip.Any(page => path.Contains(page, StringComparison.Ordinal)));

    /// <summary>Whether it is a file for readers, not a page of the desk.</summary>
    public static bool IsForReaders(string path) => path.StartsWith(ReaderPages.Prefix, StringComparison.Ordinal);
}

/// <summary>The pages as cases of a test.</summary>
public sealed class EveryPage : TheoryData<string>
{
    public EveryPage() => AddRange(Pages.All);
}
