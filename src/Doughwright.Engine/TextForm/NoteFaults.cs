namespace Doughwright.Engine.TextForm;

/// <summary>Kinds of findings about the text of a note.</summary>
internal static class NoteFaults
{
    public const string TitleMissing = "note-title-missing";
    public const string TitleLong = "note-title-long";
    public const string Empty = "note-empty";
    public const string TooLong = "note-too-long";
    public const string PictureUnknown = "note-picture-unknown";
    public const string PicturesMany = "note-pictures-many";
    public const string HeadingWithin = "note-heading-within";
}
