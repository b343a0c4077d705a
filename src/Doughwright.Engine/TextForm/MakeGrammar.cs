using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>"10 rolls of 80 g".</summary>
internal static class MakeGrammar
{
    public const string Of = " of ";

    public static Make? Read(Phrase words)
    {
        var of = words.Text.LastIndexOf(Of, StringComparison.Ordinal);
        var space = words.Text.IndexOf(' ');
        if (of < 0 || space >= of)
        {
            words.Fault(FormFaults.MakeNotUnderstood);
            return null;
        }

        var pieces = words.Part(0, space).Count(Limits.Pieces);
        var mass = words.Part(of + Of.Length, words.Text.Length).Mass(Limits.Piece);
        return pieces is { } count && mass is { } each ? new(count, words.Part(space, of).Text, each) : null;
    }
}
