using Doughwright.App.Desk.Files;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Pictures.Bake;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Files;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Pictures.Strips;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>The pictures of a page as markup; null where what they show is not known.</summary>
public sealed class PictureSet
{
    private readonly Figures figures;
    private readonly Course here;
    private readonly Course? home;
    private readonly Makeup? makeup;

    internal PictureSet(Figures figures)
    {
        this.figures = figures;
        here = figures.Here.Course();
        home = figures.State.IsAway ? figures.State.HomeCourse.Value : null;
        makeup = figures.Here.Formula.Makeup();
        var marks = figures.State.Findings.Select((finding, index) => new StripMark(index + 1, FindingShape.Of(finding), finding.Place)).ToArray();
        if (figures.Here.Steps.Count > 0)
        {
            Wide = Strips.Wide(figures.Here, here, figures.Voice, new() { Id = "wide", Marks = marks });
            Tall = Strips.Tall(figures.Here, here, figures.Voice, new() { Id = "tall", Marks = marks });
        }

        if (makeup is not null)
        {
            Balance = BalancePicture.Draw(makeup, figures.Here.Formula, figures.Voice, "balance");
            BalanceTable = MakeupTable.Of(makeup, figures.Here.Formula, figures.Voice);
        }
    }

    /// <summary>The strip as files.</summary>
    public IReadOnlyList<SaveView> Saves =>
        [Save(PictureKind.Strip, null, figures.Voice.Words["files.strip"]), Save(PictureKind.Tall, null, figures.Voice.Words["files.tall"])];

    /// <summary>What the dough consists of, as files.</summary>
    public IReadOnlyList<SaveView> BalanceSaves => [Save(PictureKind.Balance, null, figures.Voice.Words["files.balance"])];

    /// <summary>The heat balance of a mix as files.</summary>
    public IReadOnlyList<SaveView> HeatSaves(string step, string name) => [Save(PictureKind.Heat, step, figures.Voice.Say("files.heat", ("step", name)))];

    /// <summary>A rise as files.</summary>
    public IReadOnlyList<SaveView> RiseSaves(string step, string name) => [Save(PictureKind.Rise, step, figures.Voice.Say("files.rise", ("step", name)))];

    /// <summary>A bake as files.</summary>
    public IReadOnlyList<SaveView> BakeSaves(string step, string name) => [Save(PictureKind.Bake, step, figures.Voice.Say("files.bake", ("step", name)))];

    /// <summary>The strip for a wide page; null without steps.</summary>
    public string? Wide { get; }

    /// <summary>The same for a narrow one.</summary>
    public string? Tall { get; }

    public string? Balance { get; }

    public FigureTable? BalanceTable { get; }

    public string? Heat(string step) => figures.Here.HeatOf(step) is { } balance ? HeatPicture.Draw(balance, figures.Here, figures.Voice, "heat-" + step) : null;

    public FigureTable? HeatTable(string step) => figures.Here.HeatOf(step) is { } balance ? Publishing.Pictures.Heat.HeatTable.Of(balance, figures.Here, figures.Voice) : null;

    /// <summary>The rise, with that of home beside it when the recipe is made elsewhere.</summary>
    public string? Rise(string step)
    {
        if (Curve(here, step) is not { } own || figures.Here.FindStep(step) is not { } rehearsed)
        {
            return null;
        }

        var name = figures.Home.Kitchen.Name.Length > 0 ? figures.Home.Kitchen.Name : figures.Voice.Words["head.home"];
        OtherRise[] others = Curve(home, step) is { } other ? [new(name, other, figures.Home.FindStep(step)?.Time)] : [];
        return RisePicture.Draw(own, rehearsed, others, figures.Voice, "rise-picture-" + step);
    }

    public bool HasHomeRise(string step) => Curve(home, step) is not null;

    internal string Bake(BakedSection bake) => BakePicture.Draw(bake, figures.Here.FindStep(bake.Step)!, figures.Voice, "bake-picture-" + bake.Step);

    internal FigureTable BakeTable(BakedSection bake) =>
        Publishing.Pictures.Bake.BakeTable.Of(bake, figures.StepName(figures.Here.FindStep(bake.Step)!), figures.Voice);

    private SaveView Save(PictureKind kind, string? step, string what) =>
        PictureAddress.Files(figures.State.File.Name, kind, step, figures.State.Setting.Question, what);

    private static RiseCurve? Curve(Course? course, string step) => course?.Rises.FirstOrDefault(rise => rise.Step == step);
}
