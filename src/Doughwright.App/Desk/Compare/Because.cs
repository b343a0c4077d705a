using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Compare;

/// <summary>What moved a figure, in words: the parts of the engine, never a cause that was not computed.</summary>
/// <param name="dough">The dough temperature asked for in the second kitchen, in words; null when none is.</param>
internal sealed class Because(Voice voice, string? dough)
{
    /// <param name="total">The difference as shown, in steps of the measure.</param>
    public string Of(Difference difference, Measure measure, double total)
    {
        var shown = measure.ShareOut([.. difference.Parts.Select(part => part.By)], total);
        var told = difference.Parts.Zip(shown).Where(pair => pair.Second != 0).ToList();
        if (told.Count == 0)
        {
            return "";
        }

        var figures = measure.Plain([.. told.Select(pair => pair.Second)]);
        var words = told.Select((pair, index) => told.Count == 1
            ? NameOf(pair.First)
            : voice.Say("compare.part", ("mover", NameOf(pair.First)), ("by", figures[index])));
        return Sentence(string.Join(voice.Words["list-comma"], words));
    }

    /// <summary>Resource key of a move.</summary>
    public static string KeyOf(Move move) => $"compare.mover.{Voice.Kebab(move.Mover.ToString())}.{Voice.Kebab(move.Direction.ToString())}";

    private string NameOf(Difference.Part part) => voice.List(part.Moves.Select(NameOf));

    private string NameOf(Move move) => move.Mover == Mover.Warmth && dough is not null
        ? voice.Say("compare.mover.kept", ("dough", dough))
        : voice.Words[KeyOf(move)];

    /// <summary>Words as a sentence of their own.</summary>
    public string Sentence(string words) => words.Length == 0 ? "" : voice.Say("compare.because", ("words", Capital.Of(words)));
}
