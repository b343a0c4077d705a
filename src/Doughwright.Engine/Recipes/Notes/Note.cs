namespace Doughwright.Engine.Recipes.Notes;

/// <summary>A short teaching note, written once and linked from the steps of any recipe. Its values and pictures are those of the recipe that it stands in.</summary>
/// <param name="Title">As typed; empty where none is.</param>
/// <param name="Blocks">Paragraphs and pictures in the order of the text.</param>
public sealed record Note(string Title, IReadOnlyList<NoteBlock> Blocks);

/// <summary>One paragraph of a note, or one picture.</summary>
public abstract record NoteBlock
{
    private NoteBlock()
    {
    }

    /// <summary>A paragraph on one line, its brackets as typed.</summary>
    public sealed record Words(string Text) : NoteBlock;

    /// <summary>A picture of the recipe in which the note is read.</summary>
    public sealed record Picture(NotePicture What) : NoteBlock;
}

/// <summary>The pictures that a note can ask for. A closed list: docs/text-form.md.</summary>
public enum NotePicture
{
    /// <summary>How what is worked on rises: in the step of the note, else in the first that rises.</summary>
    Rise,

    /// <summary>Where the warmth of a mix comes from.</summary>
    Heat,

    /// <summary>What the dough consists of.</summary>
    Balance,

    /// <summary>The whole day.</summary>
    Strip,
}
