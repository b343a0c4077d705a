using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Asking;

/// <summary>Something asked that cannot be: it is left out, and said why in the words of the command line.</summary>
/// <param name="Option">Name of the option, or what stands in the address in its place.</param>
/// <param name="Typed">What was typed for it.</param>
public sealed record Refusal(string Option, string Typed, string Message, string WayOut)
{
    internal Fault Fault => new(Message, WayOut);

    /// <summary>Nothing of that name can be asked.</summary>
    /// <param name="known">What can be.</param>
    internal static Refusal Unknown(Asked asked, IReadOnlyCollection<string> known, Voice voice)
    {
        var faults = new Faults(voice);
        faults.AddUnknown("question-unknown", asked.Name.Length > 0 ? asked.Name : "=" + asked.Value, known);
        return Of(asked, faults.All[0]);
    }

    internal static Refusal Of(Asked asked, Fault fault) => new(asked.Name, asked.Value, fault.Message, fault.WayOut);
}
