using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Why something was not laid into the book, and what to do.</summary>
internal static class LeftWords
{
    public static string Reason(LeftText left, Voice voice) =>
        left.Trouble is { } trouble ? voice.Words["text-trouble." + Voice.Kebab(trouble.ToString())] : voice.Words["shelf.left-readable"];
}
