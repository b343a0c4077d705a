using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Pages.Method;
using Doughwright.Publishing.Pages.Rooms;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>Puts together what a page says.</summary>
internal static class ContentMaker
{
    /// <param name="findings">All findings of the recipe and its rehearsal.</param>
    /// <param name="linked">Notes of the book that the steps link to.</param>
    /// <param name="photos">The bytes of a photo by its name; null where it is not at hand.</param>
    public static PageContent Of(
        PageRun run, IReadOnlyList<Finding> findings, IReadOnlyList<LinkedNote> linked, PageStamp stamp, Words words, MeasureSystem measures, Func<string, byte[]?> photos)
    {
        var here = run.Here;
        var recipe = here.Recipe;
        var both = new Both(words, measures);
        var live = LiveValues.Of(here, both);
        var total = here.Total is { } all ? Fives.Near(all.Likely) : (Duration?)null;
        var parts = new PartsMaker(here, both);
        var tools = ToolsMaker.Of(recipe, live, both);
        var notes = NoteMaker.Of(linked, here, both);
        return new()
        {
            Title = recipe.Title,
            Lead = Prose.Paragraphs(recipe.Words, live),
            Yield = recipe.Make is { } make ? both.Say("page.yield", ("pieces", make.Pieces), ("what", make.What)) : null,
            Total = total,
            Facts = [.. new FactsMaker(run, both, findings).All(total)],
            Strip = here.Steps.Count == 0 ? null : Strip(run, both.Voice),
            StripCaption = words["page.strip-caption"],
            Rooms = run.Rooms is { } rooms ? new RoomMaker(here, both).Of(rooms) : null,
            Parts = parts.All(),
            HasNoMeasure = parts.All().Any(part => part.Lines.Any(line => line.First == words["page.no-measure"] || line.Second == words["page.no-measure"])),
            Photos = PagePhoto.All(recipe.Photos, photos),
            Steps = new StepMaker(here, both, notes.AtSteps, photos).All(),
            Notes = notes.All,
            DoneWhen = words["page.done-when"],
            Tools = tools.Tools,
            Without = tools.Others,
            Swaps = recipe.Swaps.Count == 0 ? [] : [.. new SwapWords(recipe, both, live).All(Swapping.Offer(recipe, here.Formula.Larder))],
            Keeping = [.. recipe.Keeping.Select(keeping => keeping.For is { } time
                ? both.Say("page.keeps", ("how", Capital.Of(keeping.Words)), ("time", time))
                : both.Say("page.keeps-untold", ("how", Capital.Of(keeping.Words))))],
            Cautions = [.. FindingsForReaders.Cautions(findings, both.Voice)],
            Unsettled = [.. FindingsForReaders.Unsettled(findings, recipe, both.Voice)],
            Basis = [.. new BasisMaker(here, both.Voice).All(stamp)],
        };
    }

    private static (string Wide, string Tall) Strip(PageRun run, Voice voice)
    {
        var course = run.Here.Course();
        return (Strips.Wide(run.Here, course, voice, new() { Id = "wide" }), Strips.Tall(run.Here, course, voice, new() { Id = "tall" }));
    }
}
