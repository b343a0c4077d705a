using System.Text;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Pictures.Files;

namespace Doughwright.App.Commands;

/// <summary>A picture of a rehearsal as a file, the same bytes wherever it is asked for.</summary>
/// <param name="Findings">About the picture itself: letters that no face has.</param>
internal sealed record MadePicture(PictureFile File, byte[] Bytes, IReadOnlyList<Finding> Findings)
{
    /// <summary>Null with a fault where it cannot be made so; null without one where what it shows is not known.</summary>
    /// <param name="bakes">As the rehearsal goes by them; null where none had to be computed.</param>
    public static MadePicture? Of(Rehearsal rehearsal, Request request, BakesOverSections? bakes, PictureWish wish, Options options, Faults faults)
    {
        var home = rehearsal.AtHome || wish.Kind != PictureKind.Rise ? null : Rehearser.Rehearse(rehearsal.Recipe, Larder.Shipped);
        var choice = new PictureChoice(rehearsal, home, faults.Voice);
        if (wish.Step is { } step && choice.Steps(wish.Kind) is var steps && !steps.Contains(step))
        {
            faults.AddUnknown("picture-not-of-step", step, [.. steps], ("option", options.Step.Name));
            return null;
        }

        if (Drawn(choice, rehearsal, bakes, request, wish) is not { } drawn)
        {
            return null;
        }

        var file = PictureFile.Of(drawn, wish.Ground, wish.WidthPixels);
        if (file.IsTooLarge)
        {
            faults.Add("picture-too-large", ("option", options.Width.Name), ("given", wish.WidthPixels), ("height", file.HeightPixels), ("widest", file.WidestHere));
            return null;
        }

        if (!wish.IsPng)
        {
            return new(file, Encoding.UTF8.GetBytes(file.ToSvg()), []);
        }

        var painted = file.ToPng();
        return new(file, painted.Png, painted.Missing.Count == 0 ? [] : [About("picture-letters-left-out", Grade.Warning, ("letters", painted.Missing.ToArray()))]);
    }

    private static string? Drawn(PictureChoice choice, Rehearsal rehearsal, BakesOverSections? bakes, Request request, PictureWish wish) => wish switch
    {
        { Place: { } place } => choice.Draw(place),
        { Kind: PictureKind.Bake } => (wish.Step ?? choice.UsualStep(PictureKind.Bake)) is { } step
            && (bakes ?? Bakes(rehearsal, request)).Find(step) is { } baked ? choice.Draw(baked) : null,
        _ => choice.Draw(wish.Kind, wish.Step),
    };

    private static BakesOverSections Bakes(Rehearsal rehearsal, Request request) =>
        Rehearser.OverSections(Rehearser.BakesAtHome(Formula.Balance(rehearsal.Recipe, Larder.Shipped)), Larder.Shipped, request);

    public static Finding NotKnown(PictureWish wish) => About("picture-not-known", Grade.Error, ("picture", wish.KindAsTyped));

    private static Finding About(string kind, Grade grade, params (string Name, object Value)[] arguments) => new()
    {
        Kind = kind,
        Grade = grade,
        Place = "",
        Position = Position.None,
        Arguments = arguments.ToDictionary(argument => argument.Name, argument => argument.Value),
    };
}
