using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>page FILE --out DIR: the page for readers, one file.</summary>
internal static class PageCommand
{
    public static Answer Run(CommandRun run)
    {
        var given = run.Given;
        var folder = Folder(run);
        if (ReadRecipe.Of(run, out var refused) is not { Recipe: { } recipe } read)
        {
            return refused;
        }

        if (given.Faults.Any)
        {
            return Answer.None;
        }

        var photos = BookPhotos.Of(recipe, read.File.Name);
        var made = MadePage.Of(recipe, read.File.Text, read.Findings, read.Kitchen, read.KitchenFindings, read.File.Notes, run.Voice, photos.GetValueOrDefault);
        return PageFile.Write(folder!, recipe.Title, made.Bytes, given.Faults) is { } written
            ? new(Output(run, recipe, written, made), "", CommandRun.CodeOf(made.Findings))
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

    /// <summary>"113 kB", begun ones counted.</summary>
    internal static string Size(int bytes, Voice voice) => voice.Say("page-size", ("kilobytes", (bytes + 999) / 1000));

    private static string Output(CommandRun run, Recipe recipe, string file, MadePage made)
    {
        if (run.Json)
        {
            return PageJson.Write(made.Stamp, recipe.Title, file, made.Bytes.Length, made.Findings, run.Voice);
        }

        var text = new Page();
        text.Paragraph(run.Voice.Say("page-written", ("file", file), ("size", Size(made.Bytes.Length, run.Voice))));
        FindingsText.WriteSection(text, made.Findings, run.Voice);
        return text.ToString();
    }
}
