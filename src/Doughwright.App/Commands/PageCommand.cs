using System.Text;
using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Pages;

namespace Doughwright.App.Commands;

/// <summary>page FILE --out DIR: the page for readers, one file.</summary>
internal static class PageCommand
{
    public static Answer Run(CommandRun run)
    {
        var given = run.Given;
        var folder = Folder(run);
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

        if (given.Faults.Any)
        {
            return Answer.None;
        }

        var recipe = reading.Recipe!;
        var worked = PageRun.Of(recipe, Larder.Shipped, named?.Kitchen);
        var all = FindingList.Judged(file.Text, recipe, kitchenFindings, findings, RecipeChecks.Of(recipe), worked.Here.Formula.Findings, worked.Here.Findings);
        var stamp = Stamp.Of(recipe);
        var page = ReaderPage.Write(worked, all.Open, new(stamp.State, stamp.Engine, stamp.Larder), run.Voice.Words, run.Voice.Measures);
        var bytes = Encoding.UTF8.GetBytes(page);
        return PageFile.Write(folder!, recipe.Title, bytes, given.Faults) is { } written
            ? new(Output(run, stamp, recipe, written, bytes.Length, all), "", CommandRun.CodeOf(all))
            : Answer.None;
    }

    /// <summary>The folder as typed; null with a fault when none is.</summary>
    private static string? Folder(CommandRun run)
    {
        var folder = run.Given.One(run.Options.Out);
        if (string.IsNullOrWhiteSpace(folder) && !run.Given.Faults.Any)
        {
            run.Given.Faults.Add("page-out-missing", ("example", run.Given.Example(run.Options.Out)));
        }

        return folder;
    }

    private static string Output(CommandRun run, Stamp stamp, Recipe recipe, string file, int bytes, Judgement findings)
    {
        if (run.Json)
        {
            return PageJson.Write(stamp, recipe.Title, file, bytes, findings, run.Voice);
        }

        var text = new Page();
        text.Paragraph(run.Voice.Say("page-written", ("file", file), ("size", run.Voice.Say("page-size", ("kilobytes", (bytes + 999) / 1000)))));
        FindingsText.WriteSection(text, findings, run.Voice);
        return text.ToString();
    }
}
