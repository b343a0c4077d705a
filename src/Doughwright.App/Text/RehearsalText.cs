using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>A rehearsal on a page: the kitchen, the answer, the steps, how warm things must go in, the findings, and why.</summary>
internal sealed class RehearsalText
{
    private readonly Rehearsal rehearsal;
    private readonly Voice voice;
    private readonly Page page = new();

    private RehearsalText(Rehearsal rehearsal, Voice voice) => (this.rehearsal, this.voice) = (rehearsal, voice);

    /// <param name="why">Ids of the steps whose reasons are asked for.</param>
    /// <param name="isKitchenChanged">Whether the kitchen is another than the one it is named after.</param>
    public static string Write(Rehearsal rehearsal, Request request, Judgement findings, IReadOnlyList<string> why, Voice voice, bool isKitchenChanged = false)
    {
        var text = new RehearsalText(rehearsal, voice);
        text.WriteHead(isKitchenChanged);
        if (request.Dough is { } dough && rehearsal.Solutions.Count > 0)
        {
            new SolutionText(rehearsal, voice).WriteTo(text.page, dough);
        }

        text.page.Gap();
        new StepTable(rehearsal, voice).WriteTo(text.page);
        text.WriteBakes();
        text.WriteMixed();
        FindingsText.WriteSection(text.page, findings, voice);
        foreach (var id in why)
        {
            text.WriteWhy(id);
        }

        return text.page.ToString();
    }

    private void WriteHead(bool isKitchenChanged)
    {
        var kitchen = rehearsal.Kitchen;
        var home = rehearsal.Recipe.Home;
        var key = rehearsal.AtHome ? "rehearsed-home" : kitchen.Name == home.Name ? "rehearsed-changed" : "rehearsed-in";
        if (kitchen.Name.Length == 0)
        {
            key = rehearsal.AtHome ? "rehearsed-home-unnamed" : "rehearsed-away-unnamed";
        }

        var name = isKitchenChanged && key == "rehearsed-in" ? voice.Say("kitchen-changed", ("kitchen", kitchen.Name)) : kitchen.Name;
        page.Paragraph(voice.Say(key, ("title", rehearsal.Recipe.Title), ("kitchen", name)));
        page.Gap();
        page.Paragraph(KitchenSentence());
        page.Paragraph(rehearsal.Total is { } total
            ? voice.Say(
                total.High is { } high && Show.DurationColumn(high) == Show.DurationColumn(total.Low) ? "total-exact" : "total",
                ("total", total.Likely),
                ("range", voice.Range(total.Low, total.High, inSentence: true)),
                ("hands", rehearsal.Hands))
            : voice.Say("total-unknown", ("hands", rehearsal.Hands)));
        WriteBefore();
        if (rehearsal.Components.LastOrDefault(component => component.Kind == ComponentKind.Dough)?.Mixed is { } dough)
        {
            page.Paragraph(voice.Say("dough-after-mixing", ("dough", Show.Temperature(dough.Likely, voice.Measures))));
        }
    }

    /// <summary>What must happen before the first hand; the total does not count it.</summary>
    private void WriteBefore()
    {
        foreach (var step in rehearsal.Steps.Where(step => step.Start is { Minutes: < 0 }))
        {
            page.Paragraph(voice.Say("before-start", ("step", StepName.Of(step, voice)), ("time", step.Start!.Value * -1)));
        }
    }

    private string KitchenSentence()
    {
        var kitchen = rehearsal.Kitchen;
        var sentences = new List<string>
        {
            voice.Say("kitchen-air", ("air", kitchen.Air.At(Duration.Zero)), ("shelf", kitchen.Shelf)),
            voice.Say(
                "kitchen-place",
                ("altitude", Show.Altitude(kitchen.Altitude, voice.Measures)),
                ("pressure", rehearsal.Pressure),
                ("boils", Show.Temperature(rehearsal.Boils, voice.Measures)),
                ("oven", voice.Oven(kitchen.Oven))),
        };
        var changes = kitchen.Air.Knots.Where(knot => knot.From > Duration.Zero && knot.From <= Duration.FromHours(24)).ToArray();
        if (changes.Length > 0)
        {
            sentences.Insert(1, voice.Say("kitchen-air-changes", ("changes", changes.Select(knot => voice.Say("air-change", ("air", knot.Air), ("after", knot.From))))));
        }

        if (kitchen.ProofingPlace is { } proof)
        {
            sentences.Add(voice.Say("kitchen-proof", ("proof", proof)));
        }

        return string.Join(' ', sentences);
    }

    /// <summary>What comes out of the oven, and bakes that take another time over their section than along one radius.</summary>
    private void WriteBakes()
    {
        foreach (var step in rehearsal.Steps)
        {
            if (step is { AlongRadius: { } radius, Time.Likely: var time } && Show.Duration(radius) != Show.Duration(time))
            {
                page.Gap();
                page.Paragraph(voice.Say("section.told", ("step", StepName.Of(step, voice)), ("time", time), ("radius", radius)));
            }

            var told = string.Join(' ', [.. BakeSentences.Of(step, voice), .. CoolSentences.Of(step, voice)]);
            if (told.Length > 0)
            {
                page.Gap();
                page.Paragraph(voice.Say("bake.of", ("step", StepName.Of(step, voice)), ("told", told)));
            }
        }
    }

    /// <summary>How warm each part is right after mixing or pouring.</summary>
    private void WriteMixed()
    {
        var mixed = rehearsal.Components.Where(component => component.Mixed is not null).ToArray();
        if (mixed.Length == 0)
        {
            return;
        }

        page.Gap();
        page.Paragraph(voice.Say("mixed", ("parts", mixed.Select(Mixed))));
    }

    private string Mixed(RehearsedComponent component)
    {
        var name = rehearsal.Recipe.FindComponent(component.Id)?.Name ?? component.Id;
        var warmth = component.Mixed!.Value;
        var likely = Show.Temperature(warmth.Likely, voice.Measures);
        return warmth.High is { } high && voice.Degrees(high) == voice.Degrees(warmth.Low)
            ? voice.Say("mixed-exact", ("name", name), ("likely", likely))
            : voice.Say("mixed-part", ("name", name), ("likely", likely), ("range", voice.Range(warmth.Low, warmth.High, asked: false)));
    }

    private void WriteWhy(string id)
    {
        if (rehearsal.FindStep(id) is { } step)
        {
            page.Heading(voice.Say("why-head", ("step", StepName.Of(step, voice))));
            ReasonWords.Write(page, step.Why(), voice, 2);
        }
    }
}
