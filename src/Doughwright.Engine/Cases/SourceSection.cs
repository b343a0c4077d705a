using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases;

/// <summary>Where the figures of a case stand, and how somebody knows them.</summary>
internal static class SourceSection
{
    private const string Author = "author";
    private const string Year = "year";
    private const string Title = "title";
    private const string Place = "place";
    private const string Link = "link";
    private const string HowKey = "read";
    private const string Licence = "licence";

    private static readonly string[] Keys = [Author, Year, Title, Place, Link, HowKey, Licence];

    public static CaseSource? Read(TextMapping mapping, Position position, FindingLog log)
    {
        var section = new Section(mapping, CaseText.SourceKey, log, Keys);
        foreach (var key in (string[])[Title, HowKey, Licence])
        {
            if (!section.Has(key))
            {
                log.Wrong(CaseFaults.KeyMissing, section.Place, position, ("key", key));
            }
        }

        var read = ReadHow(section);
        if (read is HowRead.Read or HowRead.ReadInACopy && !section.Has(Place) && !section.Has(Link))
        {
            log.Wrong(CaseFaults.OneOfMissing, section.Place, position, ("keys", $"{Place}, {Link}"));
        }

        var (author, year, title) = (section.Prose(Author), section.Prose(Year), section.Prose(Title));
        var (place, link, licence) = (section.Prose(Place), section.Prose(Link), section.Prose(Licence));
        return read is null || title is null || licence is null
            ? null
            : new() { Author = author, Year = year, Title = title, Place = place, Link = link, Read = read.Value, Licence = licence };
    }

    /// <summary>"read", "read in a copy": the words run together in the name of the member.</summary>
    private static HowRead? ReadHow(Section section)
    {
        if (section.Words(HowKey) is not { } words)
        {
            return null;
        }

        var known = Enum.GetValues<HowRead>().ToDictionary(WordsOf);
        if (known.TryGetValue(words.Text, out var found))
        {
            return found;
        }

        words.Log.Fault(FormFaults.UnknownWord, words.Place, words.Position, Phrase.UnknownWord(words.Text, [.. known.Keys]));
        return null;
    }

    private static string WordsOf(HowRead read) => read == HowRead.ReadInACopy ? "read in a copy" : EnumWords<HowRead>.Of(read);
}
