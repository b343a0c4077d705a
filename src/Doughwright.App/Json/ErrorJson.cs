using Doughwright.App.Commands;

namespace Doughwright.App.Json;

/// <summary>{ form, error }: the command line is wrong, or we failed.</summary>
internal static class ErrorJson
{
    public static string Write(IReadOnlyList<Fault> faults) => JsonText.Of(json =>
    {
        json.WriteStartObject("error");
        json.WriteString("message", string.Join(' ', faults.Select(fault => fault.Message)));
        json.WriteString("wayOut", string.Join(' ', faults.Select(fault => fault.WayOut).Distinct()));
        json.Array("faults", faults, fault =>
        {
            json.WriteString("message", fault.Message);
            json.WriteString("wayOut", fault.WayOut);
        });
        json.WriteEndObject();
    });
}
