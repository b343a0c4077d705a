using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A measured figure rests on the measurement first: what was seen, where and when; the rest follows from it.</summary>
internal static class MeasuredWhy
{
    public static WhyView Of(RehearsedStep step, WhyView why, Figures figures)
    {
        if (step is not { Basis: Basis.Measured, Time: { } time })
        {
            return why;
        }

        var voice = figures.Voice;
        var seen = figures.Here.Recipe.FindStep(step.Id)?.Measured;
        var kitchen = figures.Home.Kitchen.Name;
        var where = new List<string> { kitchen.Length > 0 ? kitchen : voice.Words["recipe.why-measured-home"] };
        if (seen?.On is { Length: > 0 } on)
        {
            where.Add(on);
        }

        if (seen?.TimesSeen is > 1 and var times)
        {
            where.Add(voice.Say("recipe.why-measured-seen", ("times", times)));
        }

        var said = voice.Say("recipe.why-measured", ("where", string.Join(voice.Words["list-comma"], where)), ("time", time.Likely));
        WhyView[] below = why.Below.Count > 0 ? [new(voice.Words["recipe.why-follows"], "", "", why.Below)] : [];
        return new(said, "", "", below);
    }
}
