using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Mending;

/// <summary>What a form asks to be done to a recipe's text: one of the four.</summary>
/// <param name="State">Hash of the text that was shown.</param>
/// <param name="Do">Id of a way out.</param>
/// <param name="Accept">Id of a finding to be accepted, for a reason.</param>
/// <param name="Stop">Id of a finding that is accepted no longer.</param>
/// <param name="Back">Name of the earlier text to go back to.</param>
internal sealed record MendForm(string State, string Do, string Accept, string Reason, string Stop, string Back)
{
    public const string Name = "mend";
    public const string StateName = "state";
    public const string DoName = "do";
    public const string AcceptName = "accept";
    public const string ReasonName = "reason";
    public const string StopName = "stop";
    public const string BackName = "back";

    /// <summary>By this name the server finds the form that was sent.</summary>
    public const string HandlerName = "_handler";

    public static MendForm Of(IFormCollection form) => new(
        form[StateName].ToString(),
        form[DoName].ToString(),
        form[AcceptName].ToString(),
        AcceptedText.Tidy(form[ReasonName]),
        form[StopName].ToString(),
        form[BackName].ToString());
}
