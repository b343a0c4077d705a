using System.Globalization;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Files;

namespace Doughwright.App.Commands;

/// <summary>Which picture is asked for, and how it is to look.</summary>
/// <param name="Step">Id of the step it is of; null for the usual one.</param>
internal sealed record PictureWish(PictureKind Kind, string KindAsTyped, string? Step, bool IsPng, Ground Ground, int WidthPixels)
{
    /// <summary>The place that is drawn; null for another picture.</summary>
    public DrawnPlace? Place { get; private init; }

    /// <summary>The width of a film.</summary>
    private const int UsualWidth = 1920;

    private static readonly Dictionary<string, PictureKind> Kinds = new()
    {
        ["strip"] = PictureKind.Strip,
        ["tall"] = PictureKind.Tall,
        ["rise"] = PictureKind.Rise,
        ["heat"] = PictureKind.Heat,
        ["balance"] = PictureKind.Balance,
        ["bake"] = PictureKind.Bake,
        ["place"] = PictureKind.Place,
    };

    private static readonly Dictionary<string, Ground> Grounds = new() { ["light"] = Ground.Light, ["dark"] = Ground.Dark, ["none"] = Ground.None };

    private static readonly Dictionary<string, bool> Forms = new() { ["svg"] = false, ["png"] = true };

    /// <summary>Null where something is missing or wrong; the faults say what.</summary>
    /// <param name="path">Whose ending says the form where nothing else does; null for none.</param>
    public static PictureWish? Read(Given given, Options options, Recipe recipe, string? path)
    {
        var typed = given.One(options.PictureOf) ?? "strip";
        var kind = given.Word(options.PictureOf.Name, typed, Kinds);
        var ground = given.One(options.Ground) is { } named ? given.Word(options.Ground.Name, named, Grounds) : Ground.Light;
        var width = Width(given, options);
        var place = DrawnPlaceOptions.Read(given, options, recipe, kind, typed);
        var step = kind == PictureKind.Place ? null : StepOf(given, options, recipe, kind, typed);
        var form = Form(given, options, path);
        return (kind, ground, width, form) is ({ } what, { } on, { } pixels, { } isPng) && !given.Faults.Any
            ? new(what, typed, step, isPng, on, pixels) { Place = place }
            : null;
    }

    private static string? StepOf(Given given, Options options, Recipe recipe, PictureKind? kind, string typed)
    {
        if (given.One(options.Step) is not { } name)
        {
            return null;
        }

        if (kind is { } known && !PictureChoice.IsOfStep(known))
        {
            given.Faults.Add("picture-has-no-step", ("option", options.Step.Name), ("picture", typed));
            return null;
        }

        return new Names(recipe, given.Faults).Step(options.Step.Name, name)?.Id;
    }

    private static bool? Form(Given given, Options options, string? path)
    {
        if (given.One(options.As) is { } typed)
        {
            return given.Word(options.As.Name, typed, Forms);
        }

        if (path is null)
        {
            return null;
        }

        if (Forms.TryGetValue(Path.GetExtension(path).TrimStart('.').ToLowerInvariant(), out var isPng))
        {
            return isPng;
        }

        given.Faults.Add("picture-form-not-said", ("file", path), ("option", options.As.Name));
        return null;
    }

    private static int? Width(Given given, Options options)
    {
        if (given.One(options.Width) is not { } typed)
        {
            return UsualWidth;
        }

        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var width) && width is >= PictureFile.Narrowest and <= PictureFile.Widest)
        {
            return width;
        }

        given.Faults.Add("picture-width", ("option", options.Width.Name), ("given", typed), ("low", PictureFile.Narrowest), ("high", PictureFile.Widest));
        return null;
    }
}
