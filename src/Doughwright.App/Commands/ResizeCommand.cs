using Doughwright.App.Json;
using Doughwright.App.Text;

namespace Doughwright.App.Commands;

/// <summary>resize FILE: the recipe in another size as a text, and what that changes.</summary>
internal static class ResizeCommand
{
    private const string TakeNotOffered = "resize-take-not-offered";

    // Values that lie outside what can be asked, though only the recipe tells.
    private static readonly string[] OfTheCommandLine = ["dough-outside-limits", TakeNotOffered];

    public static Answer Run(CommandRun run)
    {
        var given = run.Given;
        if (ReadRecipe.Of(run, out var refused) is not { } read)
        {
            return refused;
        }

        var options = new ResizeOptions(given, run.Options, read.Recipe);
        var wish = options.Wish();
        var take = options.Take();
        if (wish is null || given.Faults.Any)
        {
            return Answer.None;
        }

        var (resized, text, all) = SizedRecipe.Of(read.Reading, new(wish) { Kitchen = read.Kitchen, Take = take }, read.File.Text, read.KitchenFindings, read.Findings);
        if (resized.Recipe is null && resized.Findings.Where(finding => OfTheCommandLine.Contains(finding.Kind)).ToArray() is { Length: > 0 } outside)
        {
            foreach (var finding in outside)
            {
                var option = finding.Kind == TakeNotOffered ? run.Options.Take : options.Asked;
                given.Faults.AddOfOption(option.Name, finding.Kind, [.. finding.Arguments.Select(argument => (argument.Key, (object?)argument.Value))]);
            }

            return Answer.None;
        }

        var stamp = Stamp.Of(read.Recipe);
        return run.Json
            ? new(ResizeJson.Write(stamp, resized, text, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(text ?? "", ResizeText.Write(resized, all, run.Voice), CommandRun.CodeOf(all));
    }
}
