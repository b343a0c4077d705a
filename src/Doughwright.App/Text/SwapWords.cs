using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What a swap changed, sentence by sentence and figure by figure: the command line and the desk say the same.</summary>
internal sealed class SwapWords(Recipe recipe, Voice voice)
{
    public string PartOf(string component) => recipe.FindComponent(component)?.Name ?? component;

    /// <summary>"butter, now olive oil".</summary>
    public string NameOf(SwappedLine line) => line.NameBefore is { } before && line.NameAfter is { } after && before != after
        ? voice.Say("swap.becomes", ("before", before), ("after", after))
        : (line.NameAfter ?? line.NameBefore)!;

    public string Of(Mass? mass) => mass is { } known ? voice.Text(known) : voice.Words["swap.none"];

    /// <summary>"butter by olive oil, in dough", "without egg".</summary>
    public string WishOf(Wish wish) =>
        voice.Say(wish.IsWithout ? "swap.offer-without" : wish.Part is null ? "swap.offer" : "swap.offer-in", ("what", wish.What), ("by", wish.By), ("part", wish.Part));

    public string Left(SwapResidual residual) => voice.Say(
        residual.Component is null ? "swap.left-dough" : "swap.left-part",
        ("part", residual.Component is { } part ? PartOf(part) : ""),
        ("water", Signed(residual.Water)),
        ("sugar", Signed(residual.Sugar)),
        ("fat", Signed(residual.Fat)),
        ("salt", Signed(residual.Salt)));

    public string Time(RehearsedStep step) => voice.Say(
        "swap.time",
        ("step", step.Name),
        ("minutes", step.Time!.Value.Likely),
        ("range", voice.Range(step.Time.Value.Low, step.Time.Value.High, inSentence: true)),
        ("home", step.HomeTime));

    public string Buy(BuyChange change) => voice.Say(
        "swap.buy-change",
        ("name", change.Name),
        ("after", change.After is { } after ? after : voice.Words["swap.none-of-it"]),
        ("before", change.Before is { } before ? before : voice.Words["swap.none-of-it"]));

    /// <summary>What is more has its sign too.</summary>
    public string Signed(Percent? percent) =>
        percent is not { } known ? voice.Words["not-known"] : (known.Value >= 0.05 ? "+" : "") + voice.Text(known);
}
