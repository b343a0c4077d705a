namespace Doughwright.Engine.TextForm;

/// <summary>One line of a text, cleaned of what cannot stand in one. Column of the first character is 1.</summary>
/// <param name="Text">Without its line end; forbidden characters are replaced one for one, so columns hold.</param>
/// <param name="Start">Index of the first character that is not a space.</param>
/// <param name="Indent">The level it stands at, in spaces: the same as the start, but where a tab hides it.</param>
/// <param name="Faulty">A character of it was replaced or its end cut off, and a finding says so.</param>
internal readonly record struct SourceLine(int Number, string Text, int Start, int Indent, bool Faulty)
{
    public bool IsBlank => Start == Text.Length;

    public bool IsComment => !IsBlank && Text[Start] == '#';

    /// <summary>The line from its first character that is not a space.</summary>
    public string Content => Text[Start..];
}
