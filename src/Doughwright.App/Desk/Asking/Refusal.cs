using Doughwright.App.Commands;

namespace Doughwright.App.Desk.Asking;

/// <summary>Something asked that cannot be: it is left out, and said why in the words of the command line.</summary>
/// <param name="Option">Name of the option, or what stands in the address in its place.</param>
/// <param name="Typed">What was typed for it.</param>
public sealed record Refusal(string Option, string Typed, string Message, string WayOut)
{
    internal Fault Fault => new(Message, WayOut);

    internal static Refusal Of(Asked asked, Fault fault) => new(asked.Name, asked.Value, fault.Message, fault.WayOut);
}
