using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Parts;

/// <summary>The rises by the warmth of the room. Without a script this is a reader's own kitchen.</summary>
internal static class RoomPart
{
    /// <summary>From so many columns on, the table is set closer, and folded on a phone.</summary>
    private const int Many = 5;

    public static void Write(Html page, PageContent content, Voice voice)
    {
        if (content.Rooms is not { } rooms)
        {
            return;
        }

        using (page.In("section", IsMany(rooms) ? "sec rooms many" : "sec rooms", ("aria-labelledby", "rooms")))
        {
            page.Put("h2", voice.Words["page.rooms"], null, ("id", "rooms"));
            page.Author("p", string.Join(' ', rooms.Notes), "note");
            using (page.In("section", "scroll", ("tabindex", "0"), ("aria-label", voice.Words["page.rooms-table"])))
            using (page.In("table", "fig"))
            {
                Head(page, rooms, voice);
                using (page.In("tbody"))
                {
                    foreach (var row in rooms.Rows)
                    {
                        Row(page, row, rooms, voice);
                    }
                }
            }
        }

        page.Line();
    }

    private static bool IsMany(RoomSection rooms) => 1 + (rooms.Lever is null ? 0 : 1) + rooms.Rises.Count >= Many;

    private static void Head(Html page, RoomSection rooms, Voice voice)
    {
        using (page.In("thead"))
        using (page.In("tr"))
        {
            page.Put("th", voice.Words["page.room"], null, ("scope", "col"));
            if (rooms.Lever is { } lever)
            {
                page.Author("th", lever, "lever", ("scope", "col"));
            }

            foreach (var rise in rooms.Rises)
            {
                using (page.In("th", null, ("scope", "col"), ("dir", "auto")))
                {
                    page.Text(rise).Put("span", voice.Words["head.hours"], "u");
                }
            }
        }
    }

    private static void Row(Html page, RoomLine row, RoomSection rooms, Voice voice)
    {
        using (page.In("tr", row.IsHere ? "here" : null))
        {
            using (page.In("th", null, ("scope", "row")))
            {
                page.Text(row.Room);
                if (row.IsHere)
                {
                    page.Put("span", voice.Words["page.rooms-here"], "rg");
                }
            }

            if (row.Lever is { } lever)
            {
                page.Author("td", lever, "lever");
            }

            foreach (var ((likely, range), rise) in row.Times.Zip(rooms.Rises))
            {
                using (page.In("td"))
                {
                    if (IsMany(rooms))
                    {
                        // Its head stands nowhere near where the row is folded.
                        page.Author("span", rise, "onfold", ("aria-hidden", "true"));
                    }

                    page.Text(likely);
                    if (range is not null)
                    {
                        page.Put("span", range, "rg");
                    }
                }
            }
        }
    }
}
