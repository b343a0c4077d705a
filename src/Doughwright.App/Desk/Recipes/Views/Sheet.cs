using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Kitchens;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A recipe's page in finished words.</summary>
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
    IReadOnlyList<Section> Sections,
    MethodView Method,
    string CommandLine)
{
    /// <param name="state">What lies on the desk.</param>
    /// <param name="kitchens">Kitchens of the user's folder.</param>
    public static Sheet Of(DeskState state, IReadOnlyList<(string Name, Kitchen? Kitchen)> kitchens, Voice voice)
    {
        var figures = new Figures(state, voice);
        var findings = FindingView.All(state.Findings, state.Recipe, voice);
        var pictures = new PictureSet(figures);
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
            Views.Sections.Of(figures, pictures),
            MethodMaker.Of(figures),
            state.Setting.Read.CommandLine);
    }
}
