using System.Text;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests;

/// <summary>What a command line gave.</summary>
internal sealed record Run(int ExitCode, string Output, string Messages)
{
    public static Run Of(params string[] arguments) => With("", null, arguments);

    public static Run WithInput(string input, params string[] arguments) => With(input, null, arguments);

    public static Run WithWords(Words words, params string[] arguments) => With("", words, arguments);

    private static Run With(string input, Words? words, string[] arguments)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(input));
        using var output = new StringWriter();
        using var messages = new StringWriter();
        var code = Cli.Run(arguments, stream, output, messages, words);
        return new(code, output.ToString(), messages.ToString());
    }
}
