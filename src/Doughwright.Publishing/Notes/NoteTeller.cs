using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes.Live;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Notes;

/// <summary>Puts the values and pictures of a rehearsal into a note. What is not known there is said with the reason, never left out.</summary>
/// <param name="value">Says a value that is known.</param>
internal sealed class NoteTeller(Rehearsal here, Voice voice, Func<LiveName, object, string> value)
{
    private readonly NotePictures pictures = new(here, voice);

    /// <summary>With the values as the desk says them.</summary>
    public static NoteTeller OnTheDesk(Rehearsal here, Voice voice) => new(
        here,
        voice,
        (name, known) => name.Kind == LiveKind.StepCue ? LiveProse.Of((string)known, name.Step, here, voice) : LiveProse.Said(known, voice));

    /// <summary>Words of a note away from every recipe: a temperature in the measures of the reader, and what is named by its name.</summary>
    public static string WithoutRecipe(string prose, Voice voice) => string.Concat(ProsePiece.Of(prose).Select(piece => piece.Name is { } name ? Fixed(name, voice) ?? name : piece.Text));

    /// <param name="step">Id of the step at which it stands; null when it is read beside the steps.</param>
    /// <param name="id">Begins the names of its pictures; unique on the page.</param>
    public ToldNote Tell(Note? note, string name, string? step, string id) => note is null
        ? new(name, [new ToldBlock.Absent(voice.Words["note.unreadable"])])
        : new(
            note.Title.Length > 0 ? note.Title : name,
            [.. note.Blocks.Select((block, index) => block switch
            {
                NoteBlock.Picture picture => pictures.Draw(picture.What, step, $"{id}-{index}"),
                NoteBlock.Words words => new ToldBlock.Words([.. ProsePiece.Of(words.Text).Select(piece => Piece(piece, step))]),
                _ => throw new ArgumentOutOfRangeException(nameof(note), block, "No such block."),
            })]);

    private NotePiece Piece(ProsePiece piece, string? step)
    {
        if (piece.Name is not { } words)
        {
            return new(piece.Text, NotePieceKind.Plain);
        }

        if (Fixed(words, voice) is { } degrees)
        {
            return new(degrees, NotePieceKind.Plain);
        }

        var name = NoteNames.Find(here.Recipe, words, step);
        return name is null ? Absent(voice.Say(step is null && NoteNames.IsOfStep(words) ? "note.why.no-step" : "note.why.nothing", ("name", words)))
            : Missing.Reason(name, here) is { } reason ? Absent(voice.Words[reason])
            : LiveValue.Of(name, here) is { } known ? new(value(name, known), NotePieceKind.Live)
            : Absent(voice.Words["note.why.not-known"]);
    }

    /// <summary>A temperature that is the same in every recipe is written like one, so that each reader has it in measures of their own. Null for a name.</summary>
    private static string? Fixed(string words, Voice voice) => QuantityText.TryTemperature(words).Value is { } degrees ? LiveProse.Said(degrees, voice) : null;

    private NotePiece Absent(string why) => new(voice.Say("note.not-here", ("why", why)), NotePieceKind.Absent);
}
