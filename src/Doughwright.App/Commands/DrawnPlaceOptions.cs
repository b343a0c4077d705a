using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Pictures.Files;

namespace Doughwright.App.Commands;

/// <summary>What a command line asks of the picture of a place: that of "place", and which of the places it is.</summary>
internal static class DrawnPlaceOptions
{
    private static readonly Dictionary<string, PlaceKind> Kinds = new()
    {
        ["oven"] = PlaceKind.Oven,
        ["cool-box"] = PlaceKind.CoolBox,
        ["cupboard"] = PlaceKind.Cupboard,
        ["water-bath"] = PlaceKind.WaterBath,
    };

    /// <summary>Null where another picture is asked for, or something is missing or wrong; the faults say what.</summary>
    public static DrawnPlace? Read(Given given, Options options, Recipe recipe, PictureKind? picture, string typed)
    {
        if (picture != PictureKind.Place)
        {
            foreach (var option in new System.CommandLine.Option[] { options.To, options.In, options.Lamp, options.OpenWater }.Where(given.Has))
            {
                given.Faults.Add("picture-has-no-place", ("option", option.Name), ("picture", typed));
            }

            return null;
        }

        var asked = new PlaceOptions(given, options);
        var (step, target, wish) = (asked.StepOf(recipe), asked.Target(), asked.Wish());
        var kind = given.One(options.In) is { } named ? given.Word(options.In.Name, named, Kinds) : null;
        return step is not null && target is { } celsius ? new(step.Id, celsius, kind, wish) : null;
    }
}
