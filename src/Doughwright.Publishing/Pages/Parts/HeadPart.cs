using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Parts;

/// <summary>Title, the author's first words, the facts.</summary>
internal static class HeadPart
{
    /// <summary>Longer titles are set smaller, so that they do not fill the page.</summary>
    private const int LongestLarge = 80;

    public static void Write(Html page, PageContent content, Voice voice)
    {
        using (page.In("div", "intro"))
        {
            using (page.In("div"))
            {
                page.Author("h1", content.Title.Length > 0 ? content.Title : voice.Words["page.untitled"], content.Title.Length > LongestLarge ? "lengthy" : null);
                foreach (var paragraph in content.Lead)
                {
                    page.Author("p", paragraph, "lead");
                }
            }

            using (page.In("dl", "keyfacts"))
            {
                foreach (var (term, words) in content.Facts)
                {
                    page.Put("dt", term).Author("dd", words);
                }
            }
        }

        PagePhoto.Write(page, content.Photos, voice);
        page.Line();
    }
}
