namespace Doughwright.App.Commands;

/// <summary>Something wrong with a command line, in words.</summary>
/// <param name="Message">What is the case.</param>
/// <param name="WayOut">What to do.</param>
public sealed record Fault(string Message, string WayOut);
