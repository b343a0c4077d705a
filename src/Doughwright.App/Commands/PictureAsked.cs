using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>A picture that is asked for, and the file it goes into.</summary>
internal sealed record PictureAsked(PictureWish Wish, OutFile Out)
{
    /// <summary>Null where something is missing or wrong; the faults say what.</summary>
    public static PictureAsked? Read(CommandRun run, Recipe recipe)
    {
        var (given, options) = (run.Given, run.Options);
        var path = given.One(options.Out);
        var wish = PictureWish.Read(given, options, recipe, path);
        if (path is null)
        {
            given.Faults.Add("out-not-said", ("option", options.Out.Name), ("example", given.Example(options.Out)));
            return null;
        }

        var file = OutFile.At(path, given.Files(options.File), given.Faults);
        return wish is not null && file is not null && !given.Faults.Any ? new(wish, file) : null;
    }
}
