using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Readying;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A recipe's page in finished words.</summary>
/// <param name="Sections">Beside the formula, in the order of the day.</param>
/// <param name="Beneath">Under the formula, where there is room for it.</param>
/// <param name="Baked">What comes out of the oven: where there is room for it.</param>
/// <param name="Ready">Null where the recipe has no step.</param>
internal sealed record Sheet(
    HeadView Head,
    KitchenView Kitchen,
    Told Dough,
    Told Answer,
    FormulaView? Formula,
    BesideView Beside,
    PictureSet Pictures,
    IReadOnlyList<FindingView> Findings,
    string FindingCount,
    IReadOnlyList<AcceptedView> Accepted,
    IReadOnlyList<Section> Sections,
    IReadOnlyList<Section> Beneath,
    IReadOnlyList<Section> Baked,
    MethodView Method,
    ReadyForm? Ready,
    string CommandLine)
{
    /// <param name="state">What lies on the desk.</param>
    /// <param name="kitchens">Kitchens of the book.</param>
    public static Sheet Of(DeskState state, IReadOnlyList<KitchenOnShelf> kitchens, Voice voice)
    {
        var figures = new Figures(state, voice);
        var findings = FindingView.All(state, voice);
        var pictures = new PictureSet(figures);
        var sections = Views.Sections.Of(figures, pictures);
        return new(
            HeadView.Of(figures),
            KitchenView.Of(figures, kitchens),
            DoughView.Of(figures),
            AnswerView.Of(figures),
            FormulaMaker.Of(figures),
            BesideView.Of(figures),
            pictures,
            findings,
            FindingView.Count(findings, voice),
            AcceptedView.All(state, voice),
            [.. sections.Where(section => section.Id != Views.Sections.Cooling && !section.IsBake)],
            [.. sections.Where(section => section.Id == Views.Sections.Cooling)],
            [.. sections.Where(section => section.IsBake)],
            MethodMaker.Of(figures),
            state.Recipe.Steps.Count == 0 ? null : ReadyForm.Of(state.File.Name, state.Setting.Question.First(ReadyAsk.Start), null, state.Setting.Question, voice),
            state.Setting.Read.CommandLine);
    }
}
