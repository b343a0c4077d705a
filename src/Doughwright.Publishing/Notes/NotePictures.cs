using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Pictures.Strips;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Notes;

/// <summary>Draws what a note asks for, of the recipe that it stands in: of its own step where that shows it, else of the nearest that does.</summary>
internal sealed class NotePictures(Rehearsal here, Voice voice)
{
    private readonly Lazy<Course> course = new(here.Course);

    public ToldBlock Draw(NotePicture what, string? step, string id) => what switch
    {
        NotePicture.Rise => Rise(step, id),
        NotePicture.Heat => Heat(step, id),
        NotePicture.Balance => Balance(id),
        NotePicture.Strip => Strip(id),
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No such picture."),
    };

    private ToldBlock Rise(string? step, string id)
    {
        var curves = course.Value.Rises;
        var curve = curves.FirstOrDefault(rise => rise.Step == step) ?? curves.FirstOrDefault(rise => here.FindStep(rise.Step)?.Kind == StepKind.Bulk) ?? (curves.Count > 0 ? curves[0] : null);
        return curve is null || here.FindStep(curve.Step) is not { } rehearsed
            ? Absent("note.no-rise")
            : new ToldBlock.Picture([RisePicture.Draw(curve, rehearsed, [], voice, id)], Caption("note.caption.rise", rehearsed));
    }

    private ToldBlock Heat(string? step, string id)
    {
        var own = step is null ? null : here.FindStep(step);
        var mixes = here.Steps.Where(mix => mix.Kind == StepKind.Mix).ToArray();
        RehearsedStep?[] likely = [own, mixes.LastOrDefault(mix => mix.Component == own?.Component), mixes.LastOrDefault()];
        foreach (var mix in likely.OfType<RehearsedStep>())
        {
            if (here.HeatOf(mix.Id) is { } balance)
            {
                return new ToldBlock.Picture([HeatPicture.Draw(balance, here, voice, id)], Caption("note.caption.heat", mix));
            }
        }

        return Absent("note.no-heat");
    }

    private ToldBlock Balance(string id) => here.Formula.Makeup() is { } makeup
        ? new ToldBlock.Picture([BalancePicture.Draw(makeup, here.Formula, voice, id)], voice.Words["note.caption.balance"])
        : Absent("note.no-balance");

    private ToldBlock Strip(string id) => here.Steps.Count == 0
        ? Absent("note.no-strip")
        : new ToldBlock.Picture(
            [Strips.Wide(here, course.Value, voice, new() { Id = id + "-wide" }), Strips.Tall(here, course.Value, voice, new() { Id = id + "-tall" })],
            voice.Words["note.caption.strip"]);

    private string Caption(string key, RehearsedStep step) => voice.Say(key, ("step", StepName.Of(step, voice)));

    private ToldBlock.Absent Absent(string key) => new(voice.Words[key]);
}
