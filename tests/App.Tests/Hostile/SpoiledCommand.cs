using System.Text.Json;
using Doughwright.App.Commands;

namespace Doughwright.App.Tests.Hostile;

/// <summary>A command line with slips in what stands behind its options, on a sound recipe or on a spoiled one; always the same for the same number.</summary>
internal sealed record SpoiledCommand(string Input, string[] Arguments)
{
    private static readonly string[][] Sound =
    [
        ["swap", "--replace", "butter=olive oil"],
        ["swap", "--replace", "milk=oat drink", "--replace", "egg=water"],
        ["swap", "--replace", "instant yeast=fresh yeast", "--json"],
        ["place", "--to", "26C", "--step", "bulk", "--lamp", "25W"],
        ["place", "--to", "30C", "--step", "proof", "--open-water", "--json"],
        ["picture", "--of", "rise", "--step", "bulk", "--width", "700"],
        ["picture", "--of", "heat", "--step", "mix", "--ground", "dark"],
        ["picture", "--of", "strip", "--air", "17C", "--width", "400"],
        ["picture", "--of", "balance", "--json"],
        ["findings", "--do"],
        ["findings", "--accept", "=as we like it"],
        ["resize", "--pieces", "24"],
        ["resize", "--dough", "1500g", "--json"],
        ["resize", "--have", "butter=210g"],
        ["rehearse", "--air", "17C@22:00,21C@07:00", "--start", "22:00", "--ingredients", "17C", "--oven", "static", "--dough", "26C"],
        ["rehearse", "--at", "butter=20C", "--altitude", "1200m", "--tap", "9C", "--fridge", "4C", "--proof", "26C", "--json"],
    ];

    public static SpoiledCommand Of(int number)
    {
        var random = new Random(number);
        var text = random.Next(3) == 0 ? Mutations.Text(number) : Mutations.Sound(random);
        var sound = Sound[number % Sound.Length];
        string[] arguments = sound[0] == "findings" ? WithId(sound, text, random) : [.. sound];
        var values = Enumerable.Range(1, arguments.Length - 1).Where(at => !arguments[at].StartsWith("--", StringComparison.Ordinal)).ToArray();
        for (var slips = random.Next(3); slips > 0 && values.Length > 0; slips--)
        {
            var at = values[random.Next(values.Length)];
            arguments[at] = Mutations.Value(arguments[at], random);
        }

        return new(text, arguments);
    }

    /// <param name="folder">Where pictures go.</param>
    /// <returns>The exit code.</returns>
    public int Try(string folder)
    {
        string[] file = Arguments[0] == "picture" ? ["-", "--out", Path.Join(folder, $"{Guid.NewGuid()}.svg")] : ["-"];
        var run = Run.WithInput(Input, [Arguments[0], .. file, .. Arguments.Skip(1)]);
        var told = string.Join(' ', Arguments);
        Assert.True(run.ExitCode is ExitCode.Done or ExitCode.Errors or ExitCode.CommandLine or ExitCode.NotUnderstood, $"{told}: {run.ExitCode} {run.Messages}");
        SpoiledText.Holds(Input + told, $"{run.Output} {run.Messages} ");
        if (run.Output.Length > 0 && Arguments.Contains("--json"))
        {
            using var json = JsonDocument.Parse(run.Output);
            Assert.Equal(JsonValueKind.Object, json.RootElement.ValueKind);
        }

        return run.ExitCode;
    }

    /// <summary>One of the findings of the text, where it has any.</summary>
    private static string[] WithId(string[] sound, string text, Random random)
    {
        using var json = JsonDocument.Parse(Run.WithInput(text, "findings", "-", "--json").Output);
        var found = json.RootElement.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("id").GetString()!).ToArray();
        var id = found.Length > 0 ? found[random.Next(found.Length)] : "salt-high@parts.dough.salt";
        return [sound[0], sound[1], id + (sound.Length > 2 ? sound[2] : "")];
    }
}
