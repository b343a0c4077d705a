using Doughwright.Engine.Recipes;
namespace Doughwright.Engine.TextForm;

/// <summary>
/// Words of the trade and of home kitchens for what the form calls by one word only. Offered, never taken, so that every text says the same
/// thing in the same way. Where a word can mean two things, the first that fits the place is offered.
/// </summary>
internal static class TradeWords
{
    private static readonly Dictionary<string, string[]> Meant = new(StringComparer.OrdinalIgnoreCase)
    {
        // Where it was written.
        ["UK"] = ["GB"],
        ["Britain"] = ["GB"],
        ["England"] = ["GB"],
        ["USA"] = ["US"],
        ["America"] = ["US"],
        ["United States"] = ["US"],
        ["Australia"] = ["AU"],
        ["Germany"] = ["DE"],
        ["Austria"] = ["AT"],
        ["France"] = ["FR"],
        ["Italy"] = ["IT"],

        // Parts.
        ["poolish"] = ["preferment"],
        ["biga"] = ["preferment"],
        ["sponge"] = ["preferment"],
        ["levain"] = ["preferment"],
        ["mother"] = ["starter"],
        ["culture"] = ["starter"],
        ["sourdough"] = ["starter", "preferment"],
        ["tangzhong"] = ["scald"],
        ["yudane"] = ["scald"],
        ["roux"] = ["scald"],
        ["water roux"] = ["scald"],
        ["mash"] = ["puree"],
        ["egg wash"] = ["wash", "glaze"],
        ["glaze"] = ["icing"],
        ["frosting"] = ["icing"],
        ["main dough"] = ["dough"],
        ["final dough"] = ["dough"],

        // Steps.
        ["brush"] = ["glaze"],
        ["knead"] = ["mix"],
        ["kneading"] = ["mix", "by hand"],
        ["mixing"] = ["mix"],
        ["divide"] = ["shape"],
        ["shaping"] = ["shape"],
        ["preshape"] = ["shape"],
        ["bench rest"] = ["rest"],
        ["autolyse"] = ["rest"],
        ["ferment"] = ["bulk"],
        ["rise"] = ["bulk"],
        ["first rise"] = ["bulk"],
        ["first prove"] = ["bulk"],
        ["bulk rise"] = ["bulk"],
        ["bulk ferment"] = ["bulk"],
        ["bulk fermentation"] = ["bulk"],
        ["fold"] = ["bulk"],
        ["retard"] = ["bulk"],
        ["prove"] = ["proof"],
        ["proving"] = ["proof"],
        ["final proof"] = ["proof"],
        ["final prove"] = ["proof"],
        ["final rise"] = ["proof"],
        ["second rise"] = ["proof"],
        ["second prove"] = ["proof"],
        ["baking"] = ["bake"],
        ["boil"] = ["cook"],
        ["simmer"] = ["cook"],
        ["chop"] = ["prepare"],
        ["peel"] = ["prepare"],
        ["chill"] = ["cool"],
        ["cooling"] = ["cool"],
        ["soften"] = ["warm"],

        // Said of a step.
        ["tea towel"] = ["cloth"],
        ["towel"] = ["cloth"],
        ["lid"] = ["covered"],
        ["cling film"] = ["covered"],
        ["plastic wrap"] = ["covered"],
        ["uncovered"] = ["open"],
        ["hand"] = ["by hand"],
        ["kneading by hand"] = ["by hand"],
        ["mixer"] = ["machine"],
        ["stand mixer"] = ["machine"],
        ["by machine"] = ["machine"],
        ["refrigerator"] = ["fridge"],
        ["counter"] = ["room"],
        ["bench"] = ["room"],
        ["room temperature"] = ["room"],
        ["stove"] = ["hob"],
        ["convection"] = ["fan"],
        ["fan oven"] = ["fan"],
        ["conventional"] = ["static"],
        ["no fan"] = ["static"],
        ["top and bottom heat"] = ["static"],
        ["prep"] = ["hands"],
        ["temperature"] = ["ends", "air"],
        ["time"] = ["ends"],
        ["room"] = ["air"],
    };

    /// <summary>The known word that was probably meant; empty when none is near.</summary>
    public static string Offer(string written, IReadOnlyList<string> known) =>
        Meant.GetValueOrDefault(written)?.FirstOrDefault(known.Contains) ?? Nearest.Within(written, known) ?? "";
}
