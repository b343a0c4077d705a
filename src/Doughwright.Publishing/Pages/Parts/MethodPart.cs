using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Pages.Method;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Parts;

/// <summary>The method: numbered steps, each with its times, what to do, and what is seen when it is done.</summary>
internal static class MethodPart
{
    public static void Write(Html page, PageContent content, Voice voice)
    {
        using (page.In("section", "sec how", ("aria-labelledby", "how")))
        {
            page.Put("h2", voice.Words["page.how"], null, ("id", "how"));
            if (content.Steps.Count == 0)
            {
                page.Put("p", voice.Words["page.no-steps"], "note");
            }
            else
            {
                page.Put("p", voice.Words["page.how-note"], "note");
                using (page.In("ol", "steps"))
                {
                    for (var index = 0; index < content.Steps.Count; index++)
                    {
                        Step(page, content, index, voice);
                    }
                }
            }
        }

        page.Line();
    }

    private static void Step(Html page, PageContent content, int index, Voice voice)
    {
        var step = content.Steps[index];
        using (page.In("li", null, ("id", PageContent.StepId(index))))
        using (page.In("div"))
        {
            page.Author("h3", step.Name).Put("p", step.Time, "time");
            foreach (var paragraph in step.Paragraphs)
            {
                page.Author("p", paragraph);
            }

            PagePhoto.Write(page, step.Photos, voice);
            if (step.Cue is { } cue)
            {
                using (page.In("p", "cue"))
                {
                    page.Put("b", content.DoneWhen).Text(" ").Author("bdi", cue);
                }
            }

            if (step.Notes.Count > 0)
            {
                Notes(page, step, voice);
            }
        }
    }

    /// <summary>Where to read why; the notes themselves stand once, after the method.</summary>
    private static void Notes(Html page, PageStep step, Voice voice)
    {
        using (page.In("p", "why-note"))
        {
            page.Text(voice.Words["page.see-note"]);
            foreach (var (id, title) in step.Notes)
            {
                page.Text(" ").Author("a", title, null, ("href", "#" + id));
            }
        }
    }
}
