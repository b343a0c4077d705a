namespace Doughwright.App.Commands;

/// <summary>What the program tells the shell. The numbers are fixed: other programs go by them.</summary>
internal static class ExitCode
{
    /// <summary>Done, nothing wrong.</summary>
    public const int Done = 0;

    /// <summary>Done, with findings of grade error.</summary>
    public const int Errors = 1;

    /// <summary>The command line is wrong.</summary>
    public const int CommandLine = 2;

    /// <summary>A line of the text was not understood.</summary>
    public const int NotUnderstood = 3;

    /// <summary>A fault of ours.</summary>
    public const int OurFault = 70;
}
