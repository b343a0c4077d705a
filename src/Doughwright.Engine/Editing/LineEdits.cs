using System.Text;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Changes of one line. What was typed stays what it is: a percentage stays one, and the weights that hang on it follow.</summary>
public static class LineEdits
{
    /// <summary>Another amount, in grams unless a unit is typed: "60", "2 oz", "2 tbsp", "all of it" of a part.</summary>
    /// <param name="unit">What a bare number is in; empty where that must be said.</param>
    public static EditAnswer Weigh(Recipe recipe, string part, string line, string typed, string unit = "g") => Amount(recipe, part, line, TypedLine.WithUnit(typed, unit));

    /// <summary>Another amount as a percentage of the part's base: "12.5".</summary>
    public static EditAnswer Share(Recipe recipe, string part, string line, string typed) => recipe.WithLine(part, line, (component, found) =>
    {
        var words = TypedLine.WithUnit(typed, "%");
        if (typed.Trim().Length == 0)
        {
            return Empty(part, found);
        }

        if (!LineGrammar.IsShare(words))
        {
            return EditAnswer.Refuse("edit-percent-wanted", Places.OfLine(part, line), ("typed", typed.Trim()), ("line", found.Name));
        }

        return Based(recipe, component) is { } based ? Amount(recipe.Replace(component, based), part, line, words) : Amount(recipe, part, line, words);
    });

    /// <summary>What a line says behind its amount, as a text writes it: "soft, from the fridge".</summary>
    public static string Rest(Line line) => string.Join(", ", RecipeWriter.Rest(line));

    /// <summary>Other words behind the amount: its condition, how warm it goes in, what it counts as, what was weighed before and after cooking.</summary>
    public static EditAnswer Describe(Recipe recipe, string part, string line, string typed) => recipe.WithLine(part, line, (component, found) =>
    {
        var rest = TypedLine.Tidy(typed);
        var amount = found.Household is null && found.Share is null ? found.Mass is { } mass ? ExactText.Of(mass) : LineGrammar.AllOfIt : found.Typed;
        var (read, reasons) = TypedLine.Read(found.Name, rest.Length == 0 ? amount : $"{amount}, {rest}", Places.OfLine(part, line), recipe.LarderOver(Larder.Shipped));
        if (read is null)
        {
            return new EditAnswer.Refused(reasons);
        }

        var now = found with { Conditions = read.Conditions, Warmth = read.Warmth, CountsAs = read.CountsAs, Weighed = read.Weighed, Mass = read.Mass };
        return new EditAnswer.Done(
            recipe.Replace(component, component.Replace(found, now)), Deed.Of("line-described", ("line", found.Name), ("from", Rest(found)), ("to", Rest(now))));
    });

    /// <summary>How warm a line goes in: "27", "80 F", "boiling", "from the fridge"; nothing typed is as the room.</summary>
    /// <param name="unit">What a bare number is in; empty where that must be said.</param>
    public static EditAnswer Warm(Recipe recipe, string part, string line, string typed, string unit = "C") => recipe.WithLine(part, line, (component, found) =>
    {
        var words = TypedLine.WithUnit(TypedLine.Tidy(typed), unit);
        var place = Places.OfLine(part, line);
        var now = LineWarmth.AsTheRoom;
        if (words.Length > 0)
        {
            // A temperature is typed without its "at"; words for one stand alone.
            var said = QuantityText.TryTemperature(words).Ok ? $"{StepGrammar.At} {words}" : words;
            var (read, reasons) = TypedLine.Read(found.Name, $"{LineGrammar.AllOfIt}, {said}", place, recipe.LarderOver(Larder.Shipped));
            if (read is null)
            {
                return new EditAnswer.Refused(reasons);
            }

            if (read.Conditions.Count > 0 || read.CountsAs is not null || read.Weighed is not null)
            {
                return EditAnswer.Refuse("edit-warmth-wanted", place, ("typed", words), ("line", found.Name));
            }

            now = read.Warmth;
        }

        var changed = component.Replace(found, found with { Warmth = now });
        return new EditAnswer.Done(
            recipe.Replace(component, changed), Deed.Of(words.Length == 0 ? "line-as-room" : "line-warm", ("line", found.Name), ("to", words)));
    });

    /// <summary>Another name; steps and base that name the line name it anew.</summary>
    public static EditAnswer Rename(Recipe recipe, string part, string line, string typed) => recipe.WithLine(part, line, (component, found) =>
    {
        var name = TypedLine.Tidy(typed);
        var id = Slug.Of(name);
        var place = Places.OfLine(part, line);
        if (id.Length == 0)
        {
            return EditAnswer.Refuse("edit-name-missing", place, ("was", found.Name));
        }

        if (found.Uses is not null && id != found.Id)
        {
            return EditAnswer.Refuse("edit-line-is-part", place, ("line", found.Name));
        }

        if (component.Lines.Any(other => other.Id == id && !ReferenceEquals(other, found)))
        {
            return EditAnswer.Refuse("edit-line-there", place, ("name", name), ("part", component.Name));
        }

        var uses = id != part && recipe.FindComponent(id) is not null ? id : null;
        var now = component.Replace(found, found with { Id = id, Name = name, Uses = uses }) with { Base = component.Base == line ? id : component.Base };
        var renamed = recipe.Replace(component, now).Reordered(part, order => order.Select(one => one == line ? id : one));
        return new EditAnswer.Done(renamed, Deed.Of("line-renamed", ("from", found.Name), ("to", name)));
    });

    /// <summary>A new line at the end of a part, in words: "butter 50 g, soft", "12.5 % butter", or the name of another part for all of it.</summary>
    public static EditAnswer Add(Recipe recipe, string part, string typed) => recipe.WithPart(part, component =>
    {
        var place = Places.OfPart(part);
        if (LineSplit.Of(typed, recipe) is not var (name, words))
        {
            return LineRefusals.Of(typed, recipe, place);
        }

        if (!name.EnumerateRunes().Any(Rune.IsLetterOrDigit))
        {
            return EditAnswer.Refuse("edit-name-missing", place, ("was", ""));
        }

        if (component.Lines.FirstOrDefault(other => other.Id == Slug.Of(name)) is { } there)
        {
            return EditAnswer.Refuse("edit-line-there", place, ("name", there.Name), ("part", component.Name));
        }

        var (line, reasons) = TypedLine.Read(name, words, Places.OfLine(part, Slug.Of(name)), recipe.LarderOver(Larder.Shipped));
        if (line is null)
        {
            return new EditAnswer.Refused(reasons);
        }

        var uses = line.Id != part && recipe.FindComponent(line.Id) is not null ? line.Id : null;
        if (uses is null && line is { Mass: null, Share: null, Household: null })
        {
            return EditAnswer.Refuse("edit-all-of-no-part", place, ("name", name), ("parts", string.Join(", ", recipe.Components.Select(one => one.Id))));
        }

        // A text may hold a line of nothing, of a thing that is left out today. Nobody types a new one on purpose.
        if (line.Mass == Mass.Zero)
        {
            return EditAnswer.Refuse("edit-line-of-nothing", place, ("name", name));
        }

        var based = line.Share is null ? component : Based(recipe, component) ?? component;
        var now = recipe.Replace(component, based with { Lines = [.. based.Lines, line with { Uses = uses }] });
        // A mix that says its order gets the new line last.
        return new EditAnswer.Done(now.Reordered(part, order => [.. order, line.Id]), Deed.Of("line-added", ("line", line.Name), ("amount", Spoken(line)), ("part", component.Name)));
    });

    /// <summary>Takes a line out, also of the orders in which steps add lines.</summary>
    public static EditAnswer TakeOut(Recipe recipe, string part, string line) => recipe.WithLine(part, line, (component, found) => component.Lines.Count == 1
        ? EditAnswer.Refuse("edit-last-line", Places.OfLine(part, line), ("line", found.Name), ("part", component.Name))
        : new EditAnswer.Done(
            Without(recipe, component, found),
            Deed.Of("line-taken-out", ("line", found.Name), ("amount", Spoken(found)), ("part", component.Name))));

    /// <summary>Moves a line up or down among the lines of its part.</summary>
    /// <param name="by">By how many places; up is below zero.</param>
    public static EditAnswer Move(Recipe recipe, string part, string line, int by) => recipe.WithLine(part, line, (component, found) =>
        Places.Moved(component.Lines, component.Lines.ToList().IndexOf(found), by) is { } lines
            ? new EditAnswer.Done(recipe.Replace(component, component with { Lines = lines }), Deed.Of(by < 0 ? "line-up" : "line-down", ("line", found.Name), ("part", component.Name)))
            : EditAnswer.Refuse("edit-at-the-end", Places.OfLine(part, line), ("name", found.Name)));

    /// <summary>Moves a line to the end of another part. A percentage becomes the weight it was: the other part has another base.</summary>
    public static EditAnswer MoveTo(Recipe recipe, string part, string line, string other) => recipe.WithLine(part, line, (component, found) => recipe.WithPart(other, target =>
    {
        if (target.Lines.Any(there => there.Id == line))
        {
            return EditAnswer.Refuse("edit-line-there", Places.OfLine(part, line), ("name", found.Name), ("part", target.Name));
        }

        if (component.Lines.Count == 1)
        {
            return EditAnswer.Refuse("edit-last-line", Places.OfLine(part, line), ("line", found.Name), ("part", component.Name));
        }

        if (found.Uses == other)
        {
            return EditAnswer.Refuse("edit-part-in-itself", Places.OfLine(part, line), ("part", target.Name));
        }

        var moved = found.Share is null || found.Mass is not { } mass ? found : found with { Share = null, Typed = ExactText.Of(mass) };
        var now = Without(recipe, component, found).Replace(target, target with { Lines = [.. target.Lines, moved] }).Reordered(other, order => [.. order, line]);
        return new EditAnswer.Done(now, Deed.Of("line-to-part", ("line", found.Name), ("from", component.Name), ("to", target.Name)));
    }));

    /// <summary>How much a line is, as it was typed.</summary>
    public static string Spoken(Line line) => line.Typed.Trim().Replace(' ', '\u00a0');

    private static EditAnswer Amount(Recipe recipe, string part, string line, string words) => recipe.WithLine(part, line, (component, found) =>
    {
        if (words.Length == 0)
        {
            return Empty(part, found);
        }

        // What else the line says, such as "soft", decides what a measure weighs and stays.
        var said = string.Join(", ", [words, .. found.Conditions]);
        var (read, reasons) = TypedLine.Read(found.Name, said, Places.OfLine(part, line), recipe.LarderOver(Larder.Shipped));
        if (read is null)
        {
            return new EditAnswer.Refused(reasons);
        }

        if (found.Uses is null && read is { Mass: null, Share: null, Household: null })
        {
            return EditAnswer.Refuse("edit-all-of-no-part", Places.OfLine(part, line), ("name", found.Name), ("parts", string.Join(", ", recipe.Components.Select(one => one.Id))));
        }

        var now = component.Replace(found, found with { Mass = read.Mass, Share = read.Share, Household = read.Household, Typed = read.Typed });
        return new EditAnswer.Done(recipe.Replace(component, now), Deed.Of("line-amount", ("line", found.Name), ("from", Spoken(found)), ("to", Spoken(read))));
    });

    private static EditAnswer Empty(string part, Line line) =>
        EditAnswer.Refuse("edit-amount-missing", Places.OfLine(part, line.Id), ("line", line.Name), ("was", Spoken(line)));

    private static Recipe Without(Recipe recipe, Component component, Line line) => recipe
        .Replace(component, component with { Lines = [.. component.Lines.Where(other => !ReferenceEquals(other, line))], Base = component.Base == line.Id ? null : component.Base })
        .Reordered(component.Id, order => order.Where(one => one != line.Id));

    /// <summary>A part without flour whose percentages begin to be typed names the line that they are shown on; null when nothing is to be named.</summary>
    private static Component? Based(Recipe recipe, Component component)
    {
        var larder = recipe.LarderOver(Larder.Shipped);
        if (component.Base is not null || TypedShares.BaseOf(component, larder) is not null)
        {
            return null;
        }

        var largest = Formula.Balance(recipe, Larder.Shipped).FindComponent(component.Id)?.Lines.MaxBy(line => line.Mass);
        return largest is { Source: { Mass: not null, Share: null } } ? component with { Base = largest.Id } : null;
    }
}
