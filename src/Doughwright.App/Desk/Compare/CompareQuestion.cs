using System.Text;
using Doughwright.App.Desk.Asking;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Compare;

/// <summary>
/// What the address of two kitchens asks. Everything beside the two kitchens is asked of the second one, in the words of the command line, so that the
/// question of a recipe's page can be carried over as it is.
/// </summary>
/// <param name="First">Name of the first kitchen's file; <see cref="Home"/> is the recipe's own.</param>
/// <param name="Over">What else is asked of the second; without a kitchen.</param>
internal sealed record CompareQuestion(string First, string Second, Question Over)
{
    public const string FirstName = "first";
    public const string SecondName = "second";

    /// <summary>Stands for the recipe's own kitchen: no file has an empty name.</summary>
    public const string Home = "";

    /// <param name="other">The kitchen to set beside home when none is named.</param>
    public static CompareQuestion Of(string query, string other)
    {
        var over = Question.Of(query, FirstName, SecondName);
        var named = QueryHelpers.ParseQuery(query);
        var first = Named(named, FirstName) ?? Home;
        if (Named(named, SecondName) is { } second)
        {
            return new(first, second, over.Without(Question.Kitchen));
        }

        if (!over.Has(Question.Kitchen) && !Question.OfKitchen.Any(over.Has))
        {
            return new(first, other, over);
        }

        // As on the recipe's page: an address that names a kitchen and no dough means the recipe as it is written.
        var carried = over.Has(Question.Dough) || over.AsWritten ? over : over.With(Question.AsWrittenName, "");
        return new(first, over.First(Question.Kitchen) ?? Home, carried.Without(Question.Kitchen));
    }

    /// <summary>The question of the first kitchen: as it is, and the dough kept or not as in the second.</summary>
    public Question OfFirst => In(First, Over.AsWritten ? Question.Nothing.With(Question.AsWrittenName, "") : Question.Nothing);

    public Question OfSecond => In(Second, Over);

    /// <summary>Another kitchen in first place.</summary>
    public CompareQuestion WithFirst(string name) => this with { First = name };

    /// <summary>Another kitchen in second place: what was changed about the one before goes with it, and its dough is asked for anew.</summary>
    public CompareQuestion WithSecond(string name) =>
        this with { Second = name, Over = Over.Without([.. Question.OfKitchen, Question.Dough, Question.Free]) };

    /// <summary>The recipe as it is written in both, or the dough of both as warm as at home.</summary>
    public CompareQuestion AsWritten(bool asWritten) => this with
    {
        Over = Over.Without(Question.Dough, Question.Free).With(Question.AsWrittenName, asWritten ? "" : null),
    };

    /// <summary>As the query of an address.</summary>
    public string Query()
    {
        var query = new StringBuilder();
        query.Append('?');
        if (First != Home)
        {
            query.Append(FirstName).Append('=').Append(Uri.EscapeDataString(First)).Append('&');
        }

        query.Append(SecondName).Append('=').Append(Uri.EscapeDataString(Second));
        return Over.Query() is { Length: > 0 } over ? query.Append('&').Append(over, 1, over.Length - 1).ToString() : query.ToString();
    }

    /// <summary>Null when the address does not say; empty is <see cref="Home"/>.</summary>
    private static string? Named(Dictionary<string, Microsoft.Extensions.Primitives.StringValues> query, string name) =>
        query.TryGetValue(name, out var values) && values.FirstOrDefault() is { } value ? value : null;

    private static Question In(string kitchen, Question question) => question.With(Question.Kitchen, kitchen == Home ? null : kitchen);
}
