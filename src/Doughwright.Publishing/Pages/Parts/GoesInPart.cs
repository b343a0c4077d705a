using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Parts;

/// <summary>What goes in, part by part, in both systems of measures.</summary>
internal static class GoesInPart
{
    public static void Write(Html page, PageContent content, Voice voice)
    {
        using (page.In("section", "sec ing", ("aria-labelledby", "goes-in")))
        {
            page.Put("h2", voice.Words["page.goes-in"], null, ("id", "goes-in"));
            foreach (var part in content.Parts)
            {
                using (page.In("div", "part"))
                {
                    Part(page, part, voice);
                }
            }

            if (content.HasNoMeasure)
            {
                page.Put("p", voice.Words["page.no-measure-note"], "note");
            }
        }

        page.Line();
    }

    private static void Part(Html page, PagePart part, Voice voice)
    {
        page.Author("h3", part.Name);
        if (part.Note is { } note)
        {
            page.Author("p", note, "note");
        }

        using (page.In("table", "fig"))
        {
            using (page.In("thead", "vh"))
            {
                using (page.In("tr"))
                {
                    page.Put("th", voice.Words["page.ingredient"], null, ("scope", "col"));
                    foreach (var key in voice.Measures == MeasureSystem.Metric ? new[] { "page.metric", "page.us" } : ["page.us", "page.metric"])
                    {
                        page.Put("th", voice.Words[key], null, ("scope", "col"));
                    }
                }
            }

            using (page.In("tbody"))
            {
                foreach (var line in part.Lines)
                {
                    using (page.In("tr"))
                    {
                        page.Author("th", line.Name, null, ("scope", "row")).Put("td", line.First, "g").Put("td", line.Second, "us");
                    }
                }
            }
        }
    }
}
