using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>Faults of a command line, for standard error: all of them, each with its way out.</summary>
internal static class FaultText
{
    public static string Write(IReadOnlyList<Fault> faults, Voice voice)
    {
        var page = new Page();
        foreach (var fault in faults)
        {
            page.Paragraph(voice.Say("fault-line", ("message", fault.Message)), 0, 2);
            page.Paragraph(fault.WayOut, 2, 0);
        }

        return page.ToString();
    }
}
