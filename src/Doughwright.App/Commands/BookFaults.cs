using Doughwright.Book.Opening;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>Why a book could not do what was asked, in words.</summary>
internal static class BookFaults
{
    public static void Add(BookException problem, Faults faults) =>
        faults.Add("book-" + Voice.Kebab(problem.Trouble.ToString()), ("book", problem.Path), ("reason", problem.Message));
}
