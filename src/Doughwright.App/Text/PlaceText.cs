using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>How a dough comes to stand at a temperature: the ways, each with what to mind, what holds for all once; the slower choice; what a miss costs.</summary>
internal sealed class PlaceText
{
    private readonly PlaceAdvice advice;
    private readonly PlaceWords words;
    private readonly Voice voice;
    private readonly Page page = new();

    private PlaceText(Rehearsal rehearsal, PlaceAdvice advice, Voice voice) =>
        (this.advice, this.voice, words) = (advice, voice, new(rehearsal, advice, voice));

    public static string Write(Rehearsal rehearsal, PlaceAdvice advice, Judgement findings, Voice voice)
    {
        var text = new PlaceText(rehearsal, advice, voice);
        text.page.Paragraph(text.words.Title());
        text.page.Gap();
        text.page.Paragraph(text.words.Question());
        foreach (var place in advice.Places)
        {
            text.WritePlace(place);
        }

        if (advice.Places.Count > 0)
        {
            text.page.Gap();
            text.page.Paragraph(text.words.Mind(), 0, 2);
        }

        if (advice.AtTarget is not null)
        {
            text.WriteChoices();
        }

        FindingsText.WriteSection(text.page, findings, voice);
        return text.page.ToString();
    }

    private void WritePlace(PlaceAnswer place)
    {
        page.Heading(voice.Member(place.Kind));
        page.Paragraph(words.Water(place), 2);
        page.Paragraph(words.Outcome(place), 2);
        foreach (var caution in place.Cautions.Where(caution => caution != PlaceCaution.Thermometer))
        {
            page.Paragraph(words.Mind(caution, place), 2, 2);
        }

        page.Paragraph(words.Assumed(place), 2, 2);
    }

    private void WriteChoices()
    {
        if (!advice.RoomDoes)
        {
            page.Heading(words.RoomHead());
            page.Paragraph(words.Room(), 2);
        }

        page.Heading(voice.Say("place.miss-head", ("miss", TemperatureDelta.FromKelvins(2))));
        page.Paragraph(words.Miss("place.too-cold", advice.TooCold), 2);
        page.Paragraph(words.Miss("place.too-warm", advice.TooWarm), 2);
        page.Paragraph(words.Miss("place.dough-too-cold", advice.DoughTooCold), 2);
        page.Paragraph(words.Miss("place.dough-too-warm", advice.DoughTooWarm), 2);
        page.Gap();
        page.Paragraph(words.Cue());
    }
}
