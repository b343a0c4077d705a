using System.Globalization;
using System.Text;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Everything a rehearsal says, as text with all digits: two rehearsals are the same when their pictures are.</summary>
internal static class Picture
{
    public static string Of(Rehearsal rehearsal)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"total {Of(rehearsal.Total)} hands {rehearsal.Hands.Minutes:R}");
        foreach (var component in rehearsal.Components)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{component.Id} {Of(component.Mixed)}");
        }

        foreach (var solution in rehearsal.Solutions)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{string.Join(',', solution.Lines)} {Of(solution.Warmth)} {solution.Offered}");
            foreach (var (what, warmth) in solution.Meets)
            {
                text.AppendLine(CultureInfo.InvariantCulture, $"  {what} {warmth.Celsius:R}");
            }
        }

        foreach (var step in rehearsal.Steps)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{step.Id} {step.Basis} {step.Dial?.Here}");
            text.AppendLine(CultureInfo.InvariantCulture, $"  at {step.Start?.Minutes:R} for {Of(step.Time)} hands {step.Hands.Minutes:R} home {step.HomeTime?.Minutes:R}");
            text.AppendLine(CultureInfo.InvariantCulture, $"  from {step.StartTemperature?.Celsius:R} to {step.EndTemperature?.Celsius:R}");
            text.AppendLine(CultureInfo.InvariantCulture, $"  settles {step.SettlesAt?.Celsius:R} growth {step.Growth:R}");
            text.AppendJoin('\n', step.Events.Select(happening => $"  {happening.What} {Of(happening.After)}"));
            Reason(text, step.Why(), 1);
        }

        text.AppendJoin('\n', rehearsal.Findings.Select(finding => $"{finding.Kind} {finding.Place}"));
        return text.ToString();
    }

    private static void Reason(StringBuilder text, Reason reason, int depth)
    {
        text.Append(' ', 2 * depth).AppendLine(CultureInfo.InvariantCulture, $"{reason.Kind} {reason.Subject} {reason.Value:R}");
        foreach (var part in reason.Parts)
        {
            Reason(text, part, depth + 1);
        }
    }

    private static string Of(Estimate<Duration>? time) =>
        time is { } known ? FormattableString.Invariant($"{known.Likely.Minutes:R} ({known.Low.Minutes:R} to {known.High?.Minutes:R})") : "?";

    private static string Of(Estimate<Temperature>? warmth) =>
        warmth is { } known ? FormattableString.Invariant($"{known.Likely.Celsius:R} ({known.Low.Celsius:R} to {known.High?.Celsius:R})") : "?";
}
