using System.Text;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Wording;

/// <summary>docs/findings.md lists every kind of finding with its grade and its way out. ACCEPT=1 writes it anew.</summary>
public class FindingsDocTests
{
    [Fact]
    public void TheList_IsComplete() => Golden.CheckFile(House.PathTo("docs", "findings.md"), Page());

    [Fact]
    public void EveryKind_HasAGrade() => Assert.All(KindScan.Findings(), kind => Assert.NotEmpty(kind.Value));

    private static string Page()
    {
        var page = new StringBuilder(
            """
            # Findings

            A finding is something wrong, missing or risky in a recipe: the place, the reason and the way out. This is the list of all kinds. It is made from the
            program itself, so it is complete.

            - **error**: something is wrong. What depends on it is not worked out, or not to be trusted. Exit code 1, or 3 where a line was not understood.
            - **warning**: something is likely to go otherwise than the author means.
            - **hint**: good to know.

            A safety finding, whatever its grade, says that somebody can be hurt. It cannot be accepted away.
            Words in braces are filled in with what the recipe says.

            | kind | grade | what it says | way out |
            |---|---|---|---|

            """.ReplaceLineEndings("\n"));
        foreach (var (kind, grades) in KindScan.Findings())
        {
            page.Append($"| `{kind}` | {string.Join(" or ", grades)} | {Cell(kind + ".message")} | {Cell(kind + ".wayOut")} |\n");
        }

        return page.ToString();
    }

    private static string Cell(string key) => Words.Shipped[key].Replace("|", "\\|", StringComparison.Ordinal);
}
