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
        var named = given.One(run.Options.Kitchen) is { } name ? KitchenShelf.Find(name, given.Faults) : null;
        if (run.ReadFile() is not { } file)
        {
            return Answer.None;
        }

        var (reading, findings, understood) = CommandRun.Understand(file);
        var kitchenFindings = named?.Findings ?? [];
        if (!understood || named is { Understood: false } or { Kitchen: null })
        {
            return run.NotUnderstood([.. findings, .. kitchenFindings]);
        }

        var options = new ResizeOptions(given, run.Options, reading.Recipe!);
        var wish = options.Wish();
        var take = options.Take();
        if (wish is null || given.Faults.Any)
        {
            return Answer.None;
        }

        var (resized, text, all) = SizedRecipe.Of(reading, new(wish) { Kitchen = named?.Kitchen, Take = take }, file.Text, kitchenFindings, findings);
        if (resized.Recipe is null && resized.Findings.Where(finding => OfTheCommandLine.Contains(finding.Kind)).ToArray() is { Length: > 0 } outside)
        {
            foreach (var finding in outside)
            {
                var option = finding.Kind == TakeNotOffered ? run.Options.Take : options.Asked;
                given.Faults.AddOfOption(option.Name, finding.Kind, [.. finding.Arguments.Select(argument => (argument.Key, (object?)argument.Value))]);
            }

            return Answer.None;
        }

        var stamp = Stamp.Of(reading.Recipe!);
        return run.Json
            ? new(ResizeJson.Write(stamp, resized, text, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(text ?? "", ResizeText.Write(resized, all, run.Voice), CommandRun.CodeOf(all));
    }
}
