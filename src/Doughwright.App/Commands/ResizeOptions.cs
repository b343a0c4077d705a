using System.CommandLine;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>What a command line asks of a resizing: one wish, and what is taken in whole pieces.</summary>
internal sealed class ResizeOptions(Given given, Options options, Recipe recipe)
{
    private static readonly Limit<Mass> Havable = new("have-outside-limits", Mass.FromGrams(0.1), Limits.Dough.High);

    private readonly Names names = new(recipe, given.Faults);

    private Option<string[]>[] Wishes => [options.Pieces, options.Piece, options.DoughMass, options.Have, options.Tin, options.Tray, options.Trays];

    /// <summary>The option of the one wish; only where there is one.</summary>
    public Option<string[]> Asked => Wishes.First(given.Has);

    /// <summary>The one wish; null with a fault when there is none, or more than one, or when it cannot be understood.</summary>
    public ResizeWish? Wish()
    {
        var asked = Wishes.Where(given.Has).ToArray();
        if (asked.Length == 0)
        {
            given.Faults.Add("resize-without-wish", ("wishes", Wishes.Select(wish => wish.Name).ToArray()));
            return null;
        }

        if (asked.Length > 1)
        {
            given.Faults.Add("resize-wishes-too-many", ("wishes", asked.Select(wish => wish.Name).ToArray()));
        }

        // All are read, so that everything wrong is told at once.
        return asked.Select(Read).ToArray()[0];
    }

    public Dictionary<string, int> Take()
    {
        var take = new Dictionary<string, int>();
        foreach (var (name, value) in given.Pairs(options.Take))
        {
            // "egg" in every part it stands in, "egg@wash" in one.
            var at = name.Split('@', 2, StringSplitOptions.TrimEntries);
            var part = at.Length == 2 ? names.Part(options.Take.Name, at[1]) : null;
            var line = at.Length == 2 && part is null ? null : names.Line(options.Take.Name, at[0], part);
            if (given.Count(options.Take.Name, value, Limits.Pieces) is { } count && line is not null && !take.TryAdd(part is null ? line : $"{line}@{part}", count))
            {
                given.Faults.Add("name-twice", ("option", options.Take.Name), ("name", name));
            }
        }

        return take;
    }

    private ResizeWish? Read(Option<string[]> option) =>
        option == options.Pieces ? given.Count(option, Limits.Pieces) is { } count ? new ResizeWish.Pieces(count) : null
        : option == options.Piece ? given.Mass(option, Limits.Piece) is { } each ? new ResizeWish.PieceMass(each) : null
        : option == options.DoughMass ? given.Mass(option, Limits.Dough) is { } dough ? new ResizeWish.Dough(dough) : null
        : option == options.Have ? Have()
        : option == options.Trays ? given.Count(option, Limits.Trays) is { } trays ? new ResizeWish.Trays(trays) : null
        : Vessel(option);

    private ResizeWish? Have()
    {
        var pairs = given.Pairs(options.Have).ToArray();
        if (pairs.Length > 1)
        {
            given.Faults.Add("option-twice", ("option", options.Have.Name), ("values", given.All(options.Have)));
        }

        if (pairs.Length == 0)
        {
            return null;
        }

        var (part, line) = names.PartOrLine(options.Have.Name, pairs[0].Name);
        return given.Mass(options.Have.Name, pairs[0].Value, Havable) is not { } mass ? null
            : part is not null ? new ResizeWish.HavePart(part, mass)
            : line is not null ? new ResizeWish.HaveLine(line, mass)
            : null;
    }

    /// <summary>"30x11x10cm", or the recipe's own before a colon: "25x11x7cm:30x11x10cm".</summary>
    private ResizeWish? Vessel(Option<string[]> option)
    {
        if (given.One(option) is not { } text)
        {
            return null;
        }

        var shape = option == options.Tin ? VesselShape.Tin : VesselShape.Tray;
        var halves = text.Split(':');
        var sizes = halves.Select(half => VesselSizeText.Read(half.Trim(), shape)).ToArray();
        if (halves.Length > 2 || sizes.Any(size => size is null))
        {
            given.Faults.Add(shape == VesselShape.Tin ? "tin-wanted" : "tray-wanted", ("option", option.Name), ("given", text));
            return null;
        }

        var own = sizes.Length == 2 ? sizes[0] : null;
        return shape == VesselShape.Tin ? new ResizeWish.Tin(sizes[^1]!, own) : new ResizeWish.Tray(sizes[^1]!, own);
    }
}
