using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Pages.Making;
using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Pages.Parts;
using Doughwright.Publishing.Pages.Structured;
using Doughwright.Publishing.Pages.Style;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages;

/// <summary>
/// The readers' page: one file with its style, its faces and its pictures in it. It has no script, asks nobody for anything, and is the same
/// for the same recipe, kitchen and engine, byte by byte.
/// </summary>
internal static class ReaderPage
{
    /// <summary>What the head of every page of ours says, so that ours can be told from other files.</summary>
    public const string Generator = "Doughwright";

    /// <summary>The whole page.</summary>
    /// <param name="findings">All findings of the recipe and its rehearsal.</param>
    /// <param name="linked">Notes of the book that its steps link to; null for a text of no book.</param>
    /// <param name="photos">The bytes of a photo by its name; null for a text of no book.</param>
    public static string Write(
        PageRun run, IReadOnlyList<Finding> findings, PageStamp stamp, Words words, MeasureSystem measures, IReadOnlyList<LinkedNote>? linked = null, Func<string, byte[]?>? photos = null)
    {
        var content = ContentMaker.Of(run, findings, linked ?? [], stamp, words, measures, photos ?? (_ => null));
        return Write(content, stamp, new(words, measures));
    }

    internal static string Write(PageContent content, PageStamp stamp, Voice voice)
    {
        var body = new Html();
        using (body.In("body", PrintLength.ClassOf(content)))
        {
            body.Put("a", voice.Words["page.skip"], "skip", ("href", "#main"));
            using (body.In("main", "sheet", ("id", "main"), ("tabindex", "-1")))
            {
                HeadPart.Write(body, content, voice);
                StripPart.Write(body, content, voice);
                using (body.In("div", "recipe"))
                {
                    using (body.In("div", "before"))
                    {
                        GoesInPart.Write(body, content, voice);
                        FinePart.Tools(body, content, voice);
                    }

                    MethodPart.Write(body, content, voice);
                }

                RoomPart.Write(body, content, voice);
                FinePart.Write(body, content, voice);
                NotesPart.Write(body, content, voice);
            }
        }

        var markup = body.ToString();
        return $"<!DOCTYPE html>\n<html lang=\"en\">\n{Head(content, stamp, PageStyle.Of(markup), voice)}\n{markup}\n</html>\n";
    }

    private static string Head(PageContent content, PageStamp stamp, string style, Voice voice)
    {
        var head = new Html();
        using (head.In("head"))
        {
            head.Put("meta", "", null, ("charset", "utf-8")).Line();
            // Nothing is loaded and nothing runs, whatever a text may have held.
            head.Put("meta", "", null, ("http-equiv", "Content-Security-Policy"), ("content", $"default-src 'none'; style-src {PageStyle.SourceOf(style)}; font-src data:;{(content.ShowsPhotos ? " img-src data:;" : "")} base-uri 'none'; form-action 'none'")).Line();
            head.Put("meta", "", null, ("name", "viewport"), ("content", "width=device-width, initial-scale=1")).Line();
            head.Put("meta", "", null, ("name", "generator"), ("content", $"{Generator} {stamp.Engine}")).Line();
            head.Put("title", content.Title.Length > 0 ? content.Title : voice.Words["page.untitled"]).Line();
            if (content.Lead.Count > 0)
            {
                head.Put("meta", "", null, ("name", "description"), ("content", content.Lead[0])).Line();
            }

            head.Raw($"<script type=\"application/ld+json\">{StructuredData.Json(StructuredData.Of(content))}</script>").Line();
            head.Raw($"<style>{style}</style>");
        }

        return head.ToString();
    }
}
