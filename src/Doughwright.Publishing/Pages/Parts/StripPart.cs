using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Parts;

/// <summary>The day as one strip, wide and tall, with its key.</summary>
internal static class StripPart
{
    public static void Write(Html page, PageContent content, Voice voice)
    {
        if (content.Strip is not (var wide, var tall))
        {
            return;
        }

        using (page.In("figure", "stripbox", ("id", PageContent.StripId)))
        {
            page.Raw(Harmless.Clean(wide)).Raw(Harmless.Clean(tall));
            using (page.In("figcaption", "stripnote"))
            {
                page.Put("span", content.StripCaption);
                var key = WarmthKey.Of(voice);
                using (page.In("span", "warmscale"))
                {
                    page.Put("span", key.Coldest);
                    using (page.In("span", "run", ("aria-hidden", "true")))
                    {
                        foreach (var chip in key.Chips)
                        {
                            page.Put("span", "", "chip " + chip);
                        }
                    }

                    page.Put("span", key.Hottest);
                }

                using (page.In("span"))
                {
                    page.Raw(CombKey.Draw()).Text(" " + voice.Words["page.comb-key"]);
                }
            }
        }

        page.Line();
    }
}
