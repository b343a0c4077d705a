using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Sizes;

/// <summary>
/// What an address asks of a resizing. Names and values are those of the options of "resize", read by the same code; a form sends the two controls of
/// its sentence instead, which come to the same.
/// </summary>
/// <param name="By">What is counted or weighed: "pieces", "dough", "have=potato".</param>
/// <param name="Amount">As it stands in the field.</param>
/// <param name="Request">Null when nothing is asked yet, or what is asked is refused.</param>
internal sealed record SizeAsk(string By, string Amount, ResizeRequest? Request, IReadOnlyList<Fault> Faults)
{
    public const string ByName = "by";
    public const string AmountName = "amount";
    public const string Pieces = "pieces";
    public const string Have = "have";

    private static readonly string[] Wishes = [Pieces, "piece", "dough", Have, "tin", "tray", "trays"];
    private static readonly string[] Weighed = ["piece", "dough"];

    /// <summary>The address that a sent form means; null for an address that no form made.</summary>
    public static string? OfForm(string path, string query, MeasureSystem measures)
    {
        var sent = QueryHelpers.ParseQuery(query);
        if (!sent.TryGetValue(ByName, out var by))
        {
            return null;
        }

        var amount = sent.GetValueOrDefault(AmountName).ToString().Trim();
        var (name, of) = Cut(by.ToString());
        var complete = name == Have || Weighed.Contains(name) ? WithUnit(amount, measures) : amount;
        var address = QueryHelpers.AddQueryString(path, name, of.Length > 0 ? $"{of}={complete}" : complete);
        return sent.TryGetValue("measures", out var system) ? QueryHelpers.AddQueryString(address, "measures", system.ToString()) : address;
    }

    /// <param name="file">With a recipe.</param>
    public static SizeAsk Of(string query, RecipeFile file, ShelfFolder shelf, Voice voice)
    {
        var asked = QueryHelpers.ParseQuery(query);
        var (by, amount) = Standing(asked, file, voice);
        var wishes = asked.Keys.Where(Wishes.Contains).ToArray();
        if (wishes.Length == 0)
        {
            return new(by, amount, null, []);
        }

        // Nobody types options here.
        var faults = new Faults(voice, option => voice.Words[option == "--take" ? "sizes.whole" : "sizes.form"]);
        if (wishes.Length > 1)
        {
            faults.Add("resize-wishes-too-many", ("wishes", wishes));
            return new(by, amount, null, faults.All);
        }

        var options = new Options();
        string[] words = [.. from pair in asked where Wishes.Contains(pair.Key) || pair.Key == "take" from value in pair.Value select $"--{pair.Key}={value}"];
        var given = new Given(options.Parse([options.Resize.Name, "recipe", .. words]), faults);
        var read = new ResizeOptions(given, options, file.Recipe!);
        var (wish, take) = (read.Wish(), read.Take());
        var kitchen = Kitchen(asked.TryGetValue("kitchen", out var name) ? [.. name.OfType<string>()] : [], shelf, faults);
        return new(by, amount, wish is null || faults.Any ? null : new(wish) { Kitchen = kitchen, Take = take }, faults.All);
    }

    private static Kitchen? Kitchen(IReadOnlyList<string> asked, ShelfFolder shelf, Faults faults) => Asking.KitchenAsked.Find(asked, shelf, faults).Kitchen;

    /// <summary>What stands in the two controls: what was asked, or the recipe as it is.</summary>
    private static (string By, string Amount) Standing(Dictionary<string, Microsoft.Extensions.Primitives.StringValues> asked, RecipeFile file, Voice voice)
    {
        if (Array.Find(Wishes, asked.ContainsKey) is not { } name)
        {
            return file.Recipe!.Make is { } make ? (Pieces, Show.Number(make.Pieces, 0)) : ("dough", voice.Text(file.Formula!.Dough));
        }

        var value = asked[name].ToString();
        var equals = value.IndexOf('=', StringComparison.Ordinal);
        return name == Have && equals > 0 ? ($"{Have}={value[..equals]}", value[(equals + 1)..]) : (name, value);
    }

    private static (string Name, string Of) Cut(string by)
    {
        var equals = by.IndexOf('=', StringComparison.Ordinal);
        return equals < 0 ? (by, "") : (by[..equals], by[(equals + 1)..]);
    }

    /// <summary>A bare number is in the unit that a page of these measures weighs with.</summary>
    private static string WithUnit(string amount, MeasureSystem measures) =>
        amount.Length > 0 && amount.All(letter => char.IsAsciiDigit(letter) || letter is '.' or ',') ? amount + (measures == MeasureSystem.Us ? "oz" : "g") : amount;
}
