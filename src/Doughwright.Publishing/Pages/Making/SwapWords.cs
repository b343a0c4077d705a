using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>A swap that the author allows, in a sentence or two.</summary>
internal static class SwapWords
{
    public static string Of(AllowedSwap swap, Recipe recipe, Func<string, string> live, Voice voice)
    {
        var part = swap.Part is { } id ? recipe.FindComponent(id)?.Name ?? id : null;
        var head = voice.Say(part is null ? "page.swap" : "page.swap-in", ("by", Capital.Of(swap.By)), ("what", Capital.Small(swap.What)), ("part", Capital.Small(part ?? "")));
        var tried = voice.Say(swap.Tried is null ? "page.swap-not-tried" : "page.swap-tried", ("day", swap.Tried));
        return string.Join(' ', Prose.Paragraphs(swap.Words, live).Prepend(head).Append(tried));
    }
}
