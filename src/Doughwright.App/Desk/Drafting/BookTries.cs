using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What is done with the book and may fail there: it is said why, and what was typed stays.</summary>
internal sealed class BookTries(Voice voice)
{
    /// <summary>What happened that no field is the place for.</summary>
    public string? Said { get; set; }

    /// <returns>Whether it is done.</returns>
    public bool Do(Action write)
    {
        try
        {
            write();
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Said = voice.Say("write.not-written", ("reason", problem.Message));
            return false;
        }
    }

    /// <param name="answer">Null when it failed.</param>
    /// <returns>Whether there is an answer.</returns>
    public bool Do(Func<WriteAnswer> write, out WriteAnswer? answer)
    {
        WriteAnswer? got = null;
        var done = Do(() => got = write());
        answer = got;
        return done;
    }
}
