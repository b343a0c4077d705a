using Doughwright.App.Desk.Drafting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>The potato rolls open on the sheet of one window or several.</summary>
public abstract class OnTheSheet : IDisposable
{
    private protected const string Rolls = "potato-rolls";

    private protected readonly Scratch scratch = Scratch.WithTheShipped();
    private protected readonly OpenDrafts drafts = new();

    private protected static Voice Voice => new(Words.Shipped, MeasureSystem.Metric);

    public void Dispose() => scratch.Dispose();

    private protected Manuscript Open() => Manuscript.Open(Rolls, scratch.Folder, drafts, Voice)!;

    private protected static bool Butter(Manuscript manuscript, string grams) => manuscript.Change("butter", grams, recipe => LineEdits.Weigh(recipe, "dough", "butter", grams));

    private protected string Text => scratch.Text(Rolls);
}
