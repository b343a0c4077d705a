using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.State;

/// <summary>Works out what is set on the desk. The recipe and its home are worked out once, when the recipe is opened.</summary>
internal sealed class Working
{
    private const string NotNeeded = "acceptance-not-needed";

    private readonly RecipeFile file;
    private readonly QuestionReader reader;
    private readonly MeasureSystem measures;
    private readonly Voice voice;
    private readonly KeptBakes bakes;
    private readonly Lazy<Course> homeCourse;
    private readonly IReadOnlyList<Finding> checks;
    private readonly Lazy<IReadOnlySet<string>> acceptable;

    /// <param name="file">With a recipe.</param>
    public Working(RecipeFile file, MeasureSystem measures, ShelfFolder shelf, Words words, KeptBakes bakes)
    {
        (this.file, this.measures, this.bakes) = (file, measures, bakes);
        voice = new(words, measures);
        reader = new(file.Recipe!, file.Name, shelf, words);
        Home = Rehearser.Rehearse(file.Formula!, Larder.Shipped, Request.Home);
        homeCourse = new(() => Home.Course());
        checks = RecipeChecks.Of(file.Recipe!);
        acceptable = new(Acceptable);
    }

    public Rehearsal Home { get; }

    /// <summary>Takes an address as it is.</summary>
    public Setting Opened(Question question)
    {
        var read = reader.Read(question, measures);
        return new(read, read.Refusals, read.Accepted.AsWritten ? KeepState.AsWritten : null);
    }

    /// <summary>Another kitchen: what was set of the one before goes with it.</summary>
    public Setting Picked(Setting before, string? kitchen)
    {
        var question = before.Question.Without(Question.OfKitchen).With(Question.Kitchen, kitchen);
        return Kept(question, [.. before.Refusals.Where(refusal => refusal.Option != Question.Kitchen && !Question.OfKitchen.Contains(refusal.Option))]);
    }

    /// <summary>A field with nothing in it says nothing, so what held goes on.</summary>
    public Setting Emptied(Setting before, string option)
    {
        var number = option == Question.Dough
            ? FieldUnit.Number(before.Read.Request.Dough ?? Keeping.HomeDough(Home)!.Value, measures)
            : FieldUnit.Number(before.Read.Kitchen, option, measures);
        var message = voice.Say("recipe.emptied", ("field", voice.Words[$"recipe.field.{option}"]), ("figure", number), ("unit", FieldUnit.Shown(option, measures)));
        return before with { Refusals = [.. Others(before, option), new(option, "", message, voice.Words["recipe.emptied-way-out"])] };
    }

    /// <summary>What holds while a value is refused; nothing where the kitchen has no such figure.</summary>
    private string StillUsed(Setting before, string option) => option == Question.Oven || (option == Question.Proof && before.Read.Kitchen.ProofingPlace is null) ? "" : voice.Say(
        "recipe.still-used", ("figure", FieldUnit.Number(before.Read.Kitchen, option, measures)), ("unit", FieldUnit.Shown(option, measures)));

    /// <summary>One value of the kitchen.</summary>
    public Setting SetOfKitchen(Setting before, string option, string typed)
    {
        var without = before.Question.With(option, null);
        var others = Others(before, option);
        var question = without.With(option, typed);
        var read = reader.Read(question, measures);
        if (read.Refusals.Count > 0)
        {
            return before with { Refusals = [.. others, .. read.Refusals.Select(refusal => refusal.Option == option ? refusal with { WayOut = (refusal.WayOut + " " + StillUsed(before, option)).TrimEnd() } : refusal)] };
        }

        // What the kitchen has anyway is not asked for.
        return Kept(read.Kitchen == reader.Read(without, measures).Kitchen ? without : question, others);
    }

    /// <summary>How warm the dough is to be, by the warmth of what; both null for as the recipe is written.</summary>
    public Setting SetDough(Setting before, string? dough, string? free)
    {
        var bare = before.Question.Without(Keeping.Names).With(Question.AsWrittenName, null);
        var others = Others(before, Question.Dough, Question.Free);
        if (dough is null || free is null)
        {
            var written = reader.Read(bare, measures);
            return written.Request.Kitchen is null
                ? new(written, others, null)
                : new(reader.Read(bare.With(Question.AsWrittenName, ""), measures), others, KeepState.AsWritten);
        }

        var read = reader.Read(bare.With(Question.Dough, dough).With(Question.Free, free), measures);
        return read.Refusals.Count > 0
            ? before with { Refusals = [.. others, .. read.Refusals] }
            : new(read, others, null);
    }

    /// <summary>Rehearses what is set. Between its parts it looks whether something newer was set.</summary>
    /// <exception cref="OperationCanceledException">Something newer was set.</exception>
    public DeskState Done(Setting setting, CancellationToken newer)
    {
        newer.ThrowIfCancellationRequested();
        var known = KeptBakes.HasBake(file.Recipe!) ? bakes.Find(file.Text, setting.Read) : null;
        var request = known?.Request ?? setting.Read.Request;
        var here = Rehearser.Rehearse(file.Formula!, Larder.Shipped, request);
        var (home, course) = AtHome(known);
        newer.ThrowIfCancellationRequested();
        var own = FindingList.Of(file.Text, file.Findings, checks, here.Formula.Findings, here.Findings);
        var judged = Acceptances.Judge(own, file.Recipe!);
        // What is accepted at home need not be found elsewhere.
        var open = judged.Open.Where(finding => here.AtHome || finding.Kind != NotNeeded).ToArray();
        var findings = FindingList.Of(file.Text, setting.Read.KitchenFindings, open);
        var offer = Keeping.HomeDough(Home) is { } dough
            ? Rehearser.Rehearse(file.Formula!, Larder.Shipped, request with { Dough = dough, Free = [] }, lanes: 1).Solutions.FirstOrDefault(solution => solution.Lines.Count > 0)
            : null;
        newer.ThrowIfCancellationRequested();
        return new(file, setting, measures, here, home, findings, offer, course)
        {
            Bakes = known,
            Accepted = judged.Accepted,
            Offers = file.IsWhole ? Offers.Of(open, file.Recipe) : Offers.None,
            Acceptable = acceptable.Value,
        };
    }

    /// <summary>Computes the bakes over their sections and works out anew what is set, by them.</summary>
    /// <exception cref="OperationCanceledException">Something newer was set.</exception>
    public DeskState Baked(Setting setting, CancellationToken newer)
    {
        bakes.Make(file.Text, file.Formula!, setting.Read, newer);
        return Done(setting, newer);
    }

    /// <summary>What nobody timed at home goes by its section there too, as soon as it is known.</summary>
    private (Rehearsal Home, Lazy<Course> Course) AtHome(BakesOverSections? known)
    {
        if (known is null || !Home.HasComputedBake)
        {
            return (Home, homeCourse);
        }

        var home = Rehearser.Rehearse(file.Formula!, Larder.Shipped, Request.Home with { SectionMinutes = known.Request.SectionMinutes });
        return (home, new(home.Course));
    }

    private HashSet<string> Acceptable() =>
    [
        .. file.Findings.Concat(checks).Concat(Home.Formula.Findings).Concat(Home.Findings).Where(finding => Acceptances.Refusal(finding) is null).Select(finding => finding.Id),
    ];

    private Setting Kept(Question question, IReadOnlyList<Refusal> refusals)
    {
        var keeping = Keeping.Of(question, reader, file.Formula!, Home);
        return new(reader.Read(keeping.Question, measures), refusals, keeping.State == KeepState.Home ? null : keeping.State);
    }

    private static Refusal[] Others(Setting before, params IReadOnlyCollection<string> options) =>
        [.. before.Refusals.Where(refusal => !options.Contains(refusal.Option))];
}
