using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Parts;

/// <summary>Tools, swaps, keeping, cautions, what is not settled, and where the figures come from. What a recipe does not say has no section.</summary>
internal static class FinePart
{
    /// <summary>What is laid out before the first hand, and what to do without it.</summary>
    public static void Tools(Html page, PageContent content, Voice voice)
    {
        using (page.In("div", "fine"))
        {
            List(page, "tools", content.Tools, tool => Tool(page, tool, voice), voice);
            List(page, "without", content.Without, without => Lacking(page, without, voice), voice);
        }

        page.Line();
    }

    public static void Write(Html page, PageContent content, Voice voice)
    {
        using (page.In("div", "fine"))
        {
            List(page, "swaps", content.Swaps, words => page.Author("li", words), voice);
            List(page, "keeping", content.Keeping, words => page.Author("li", words), voice);
            List(page, "cautions", content.Cautions, words => page.Author("li", words), voice);
            List(page, "unsettled", content.Unsettled, words => page.Author("li", words), voice);
            List(page, "basis", content.Basis, words => page.Author("li", words), voice);
        }

        page.Line();
    }

    private static void List<T>(Html page, string section, IReadOnlyList<T> items, Action<T> write, Voice voice)
    {
        if (items.Count == 0)
        {
            return;
        }

        using (page.In("section", "sec " + section, ("aria-labelledby", section)))
        {
            page.Put("h2", voice.Words["page.section." + section], null, ("id", section));
            using (page.In("ul"))
            {
                foreach (var item in items)
                {
                    write(item);
                }
            }
        }
    }

    private static void Tool(Html page, PageTool tool, Voice voice)
    {
        using (page.In("li", null, ("dir", "auto")))
        {
            page.Text(tool.Name);
            if (tool.Without is { } without)
            {
                page.Text(voice.Words["page.without-it"]).Author("bdi", without);
            }
        }
    }

    private static void Lacking(Html page, PageTool lacking, Voice voice)
    {
        using (page.In("li"))
        {
            page.Author("bdi", lacking.Name).Text(voice.Words["page.without-then"]).Author("bdi", lacking.Without ?? "");
        }
    }
}
