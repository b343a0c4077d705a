using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What a change in the text was, in a few words.</summary>
internal static class TextDifference
{
    private const int Longest = 60;

    public static string Words(string before, string after, Voice voice)
    {
        var left = before.Split('\n').ToList();
        var came = after.Split('\n').Where(line => !left.Remove(line)).ToArray();
        var changed = came.Where(line => line.Trim().Length > 0).DefaultIfEmpty(left.FirstOrDefault(line => line.Trim().Length > 0) ?? "").ToArray();
        return changed is [var only] && only.Trim().Length is > 0 and <= Longest
            ? voice.Say("did.text", ("line", only.Trim()))
            : voice.Say("did.text-lines", ("count", Math.Max(came.Length, left.Count)));
    }
}
