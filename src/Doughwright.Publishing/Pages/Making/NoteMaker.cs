using Doughwright.Engine.Recipes.Live;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>The notes of a page: each once, with the values at the first step that links to it.</summary>
internal sealed record NoteMaker(IReadOnlyList<PageNote> All, ILookup<string, (string Id, string Title)> AtSteps)
{
    public static NoteMaker Of(IReadOnlyList<LinkedNote> linked, Rehearsal here, Both both)
    {
        var teller = new NoteTeller(here, both.Voice, (name, known) => Said(name, known, here, both));
        PageNote[] all = [.. linked.DistinctBy(link => link.Name).Select((link, index) =>
            new PageNote(PageContent.NoteId(index), teller.Tell(link.Note, link.Name, link.Step, PageContent.NoteId(index))) { Name = link.Name })];
        return new(all, linked.ToLookup(link => link.Step, link => all.First(note => note.Name == link.Name) is var note ? (note.Id, note.Note.Title) : default));
    }

    private static string Said(LiveName name, object known, Rehearsal here, Both both) => name.Kind == LiveKind.StepCue
        ? LiveValues.Of(here, both, name.Step)((string)known)
        : LiveValues.Said(known, both) ?? LiveProse.Said(known, both.Voice);
}
