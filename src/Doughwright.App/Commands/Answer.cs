namespace Doughwright.App.Commands;

/// <summary>What a command gives back.</summary>
/// <param name="Output">For standard output: the data, as text or JSON.</param>
/// <param name="Messages">For standard error.</param>
internal sealed record Answer(string Output, string Messages, int ExitCode)
{
    /// <summary>Set when the desk is to be opened instead.</summary>
    public Desk.Hosting.DeskOptions? Desk { get; init; }

    /// <summary>No answer, because faults of the command line stand in the way.</summary>
    public static Answer None { get; } = new("", "", Commands.ExitCode.CommandLine);
}
