using Doughwright.App.Json;
using Doughwright.App.Text.Sides;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;

namespace Doughwright.App.Commands;

/// <summary>compare FILE FILE: two recipes, or two states of one, as a baker compares, and what the differences do in a kitchen.</summary>
internal static class CompareCommand
{
    private const int Sides = 2;

    public static Answer Run(CommandRun run)
    {
        var overlay = KitchenOptions.Read(run.Given, run.Options);
        var named = run.Given.One(run.Options.Kitchen) is { } name ? KitchenShelf.Find(name, run.Given.Files(run.Options.File), run.Given.Faults) : null;
        var files = run.ReadFiles(Sides);
        if (run.Given.Faults.Any || files is not [var first, var second])
        {
            return Answer.None;
        }

        var (one, other) = (Read.Of(first), Read.Of(second));
        if (one.Understood && other.Understood && named is { IsImpossible: true })
        {
            return run.Impossible([.. one.Findings, .. other.Findings, .. named.Value.Findings]);
        }

        if (!one.Understood || !other.Understood || named is { Understood: false } or { Kitchen: null })
        {
            return run.NotUnderstood([.. one.Findings, .. other.Findings, .. named?.Findings ?? []]);
        }

        var compared = ComparedTexts.Of((first.Name, one.Recipe!), (second.Name, other.Recipe!), KitchenOf(other.Recipe!, named?.Kitchen, overlay), Tested.First) with
        {
            IsKitchenChanged = overlay.Change(named?.Kitchen ?? other.Recipe!.Home),
        };
        var (causes, stopped) = run.Given.Has(run.Options.Because) ? Why(compared, run) : default;
        return new(
            run.Json ? CompareJson.Write(Stamp.Of(one.Recipe!), Stamp.Of(other.Recipe!), compared, causes, run.Voice) : CompareText.Write(compared, causes, run.Voice),
            stopped,
            ExitCode.Done);
    }

    /// <summary>What moved the figures, or that somebody had no patience for it: then the rest is still told.</summary>
    private static (Causes? Causes, string Stopped) Why(ComparedTexts compared, CommandRun run)
    {
        using var stop = new StopSign();
        var all = Causes.Rehearsals(compared.Differences);
        try
        {
            return (compared.Why(new ProgressLines(run.Progress, run.Voice, "sides.because-progress", all).Done, stop.Token), "");
        }
        catch (OperationCanceledException)
        {
            return (null, run.Voice.Words["sides.because-stopped"] + "\n");
        }
    }

    private static Kitchen? KitchenOf(Recipe recipe, Kitchen? named, KitchenOptions overlay) => overlay.IsEmpty ? named : overlay.Over(named ?? recipe.Home);

    /// <summary>One of the two. A place in its findings begins with the name of its file, because there are two.</summary>
    private sealed record Read(Recipe? Recipe, IReadOnlyList<Finding> Findings, bool Understood)
    {
        public static Read Of(InputFile file)
        {
            var (reading, findings, understood) = CommandRun.Understand(file);
            return new(reading.Recipe, [.. findings.Select(finding => finding with { Place = finding.Place.Length == 0 ? file.Name : $"{file.Name}: {finding.Place}" })], understood);
        }
    }
}
