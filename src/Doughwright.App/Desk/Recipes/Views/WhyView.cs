using Doughwright.App.Text;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A reason in words, and what it rests on.</summary>
/// <param name="Source">The source in brackets; empty when it has none.</param>
/// <param name="Aside">What it rests on where that is but a figure or two: on the same line.</param>
/// <param name="Below">What it rests on, each with reasons of its own.</param>
public sealed record WhyView(string Said, string Source, string Aside, IReadOnlyList<WhyView> Below)
{
    internal static WhyView Of(Reason reason, Voice voice) => Of(reason, voice, isTop: true);

    private static WhyView Of(Reason reason, Voice voice, bool isTop)
    {
        var isAside = !isTop && reason.Parts.All(part => part.Parts.Count == 0);
        return new(
            Capital.Of(ReasonWords.Said(reason, voice)),
            Bracketed(reason, voice),
            isAside ? string.Join(voice.Words["list-comma"], reason.Parts.Select(part => ReasonWords.Said(part, voice) + Bracketed(part, voice))) : "",
            isAside ? [] : [.. reason.Parts.Select(part => Of(part, voice, isTop: false))]);
    }

    private static string Bracketed(Reason reason, Voice voice) => reason.Source is { } source ? voice.Say("recipe.source", ("source", SourceNames.Of(source, voice))) : "";
}
