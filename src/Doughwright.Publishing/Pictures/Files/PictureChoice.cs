using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Pictures.Bake;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Pictures.Warming;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Files;

/// <summary>The pictures of one rehearsal, by kind and step.</summary>
/// <param name="home">The recipe at home, drawn dashed beside a rise elsewhere; null leaves it out.</param>
internal sealed class PictureChoice(Rehearsal rehearsal, Rehearsal? home, Voice voice)
{
    private const string Id = "p";

    private readonly Lazy<Course> course = new(rehearsal.Course);

    /// <summary>Whether a kind of picture is of one step.</summary>
    public static bool IsOfStep(PictureKind kind) => kind is PictureKind.Rise or PictureKind.Heat or PictureKind.Bake;

    /// <summary>Ids of the steps that such a picture can be of, in the order of the method.</summary>
    public IReadOnlyList<string> Steps(PictureKind kind) => kind switch
    {
        PictureKind.Rise => [.. rehearsal.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof).Select(step => step.Id)],
        PictureKind.Bake => [.. rehearsal.Steps.Where(step => step.Kind == StepKind.Bake).Select(step => step.Id)],
        PictureKind.Heat => [.. rehearsal.Steps.Where(step => step.Kind == StepKind.Mix).Select(step => step.Id)],
        _ => [],
    };

    /// <summary>The step that is shown when none is named: the bulk, and the last mix of the dough.</summary>
    public string? UsualStep(PictureKind kind)
    {
        var steps = Steps(kind).Select(id => rehearsal.FindStep(id)!).ToList();
        return kind == PictureKind.Bake ? steps.LastOrDefault()?.Id
            : kind == PictureKind.Rise
            ? (steps.FirstOrDefault(step => step.Kind == StepKind.Bulk) ?? steps.FirstOrDefault())?.Id
            : (steps.LastOrDefault(step => rehearsal.Recipe.FindComponent(step.Component) is { Kind: ComponentKind.Dough }) ?? steps.LastOrDefault())?.Id;
    }

    /// <summary>The picture as markup for a page; null where what it shows is not known.</summary>
    public string? Draw(PictureKind kind, string? step = null) => kind switch
    {
        PictureKind.Strip => rehearsal.Steps.Count == 0 ? null : KeyedPicture.Of(Strips.Strips.Wide(rehearsal, course.Value, voice, new() { Id = Id }), voice),
        PictureKind.Tall => rehearsal.Steps.Count == 0 ? null : KeyedPicture.Of(Strips.Strips.Tall(rehearsal, course.Value, voice, new() { Id = Id }), voice),
        PictureKind.Rise => Rise(step ?? UsualStep(kind)),
        PictureKind.Heat => (step ?? UsualStep(kind)) is { } mix && rehearsal.HeatOf(mix) is { } balance ? HeatPicture.Draw(balance, rehearsal, voice, Id) : null,
        PictureKind.Balance => rehearsal.Formula.Makeup() is { } makeup ? BalancePicture.Draw(makeup, rehearsal.Formula, voice, Id) : null,
        _ => null,
    };

    /// <summary>A place as markup for a page; null where no such place has room for the dough, none is needed, or the rise is not known.</summary>
    public string? Draw(DrawnPlace place)
    {
        var advice = Places.Advise(rehearsal, place.Step, place.Target, place.Wish);
        return advice.Places.FirstOrDefault(answer => place.Kind is null || answer.Kind == place.Kind) is { } drawn
            ? PlacePicture.Draw(drawn, advice, voice, Id)
            : null;
    }

    /// <summary>A bake as markup for a page.</summary>
    public string Draw(BakedSection bake) => BakePicture.Draw(bake, rehearsal.FindStep(bake.Step)!, voice, Id);

    private string? Rise(string? step)
    {
        if (step is null || Curve(course.Value, step) is not { } own || rehearsal.FindStep(step) is not { } rehearsed)
        {
            return null;
        }

        var name = home is null ? "" : home.Kitchen.Name.Length > 0 ? home.Kitchen.Name : voice.Words["head.home"];
        OtherRise[] others = home is not null && Curve(home.Course(), step) is { } other ? [new(name, other, home.FindStep(step)?.Time)] : [];
        return RisePicture.Draw(own, rehearsed, others, voice, Id);
    }

    private static RiseCurve? Curve(Course course, string step) => course.Rises.FirstOrDefault(rise => rise.Step == step);
}
