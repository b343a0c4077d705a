using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Warming;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Places;

/// <summary>How a dough comes to stand at a temperature, in words for a page: those of "place".</summary>
/// <param name="Said">Where matters stand.</param>
/// <param name="Mind">What holds for all the ways; empty without one.</param>
/// <param name="SlowerHead">What the other choice is, in a word.</param>
/// <param name="Slower">The other choice; empty where the room does.</param>
/// <param name="Misses">What a miss costs, and that the cue goes first; empty when nothing is known.</param>
internal sealed record PlaceView(
    string Said, IReadOnlyList<PlaceWay> Ways, string Mind, string SlowerHead, string Slower, string MissHead, IReadOnlyList<string> Misses, IReadOnlyList<FindingView> Findings)
{
    private static readonly TemperatureDelta Miss = TemperatureDelta.FromKelvins(2);

    /// <param name="file">With a recipe.</param>
    /// <param name="ask">With a step and a target.</param>
    public static PlaceView Of(RecipeFile file, PlaceAsk ask, Voice voice)
    {
        var rehearsal = Rehearser.Rehearse(file.Formula!, Larder.Shipped, ask.Read.Request);
        var advice = Engine.Rehearsals.Warming.Places.Advise(rehearsal, ask.Step!.Id, ask.Target!.Value, ask.Wish);
        var words = new PlaceWords(rehearsal, advice, voice);
        var findings = FindingList.Of(file.Text, file.Recipe!, rehearsal, ask.Read.KitchenFindings, file.Findings);
        var isKnown = advice.AtTarget is not null;
        return new(
            words.Question(),
            [.. advice.Places.Select(place => PlaceWay.Of(place, advice, words, voice))],
            advice.Places.Count > 0 ? words.Mind() : "",
            words.RoomHead(),
            isKnown && !advice.RoomDoes ? words.Room() : "",
            voice.Say("place.miss-head", ("miss", Miss)),
            isKnown ? [words.Miss("place.too-cold", advice.TooCold), words.Miss("place.too-warm", advice.TooWarm), words.Miss("place.dough-too-cold", advice.DoughTooCold), words.Miss("place.dough-too-warm", advice.DoughTooWarm), words.Cue()] : [],
            FindingView.All(PlaceCommand.With(findings, advice), file.Recipe, voice));
    }
}

/// <summary>One way to warm a place.</summary>
/// <param name="Id">Unique on the page.</param>
/// <param name="Water">How much, how warm, how long before, and when again.</param>
/// <param name="Outcome">What the dough stands in then, and how long the step takes.</param>
/// <param name="Cautions">What to mind, each in a sentence.</param>
/// <param name="Assumed">What it rests on.</param>
/// <param name="Picture">Markup.</param>
internal sealed record PlaceWay(
    string Id, string Name, string Water, string Outcome, IReadOnlyList<string> Cautions, string Assumed, string Picture, FigureTable Table)
{
    public static PlaceWay Of(PlaceAnswer place, PlaceAdvice advice, PlaceWords words, Voice voice)
    {
        var id = "place-" + Voice.Kebab(place.Kind.ToString());
        return new(
            id,
            voice.Member(place.Kind),
            words.Water(place),
            words.Outcome(place),
            [.. place.Cautions.Where(caution => caution != PlaceCaution.Thermometer).Select(caution => words.Mind(caution, place))],
            words.Assumed(place),
            PlacePicture.Draw(place, advice, voice, id + "-picture"),
            PlaceTable.Of(place, voice));
    }
}
