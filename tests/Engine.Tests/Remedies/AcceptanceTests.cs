using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.Tests.Corpus;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Remedies;

/// <summary>What an author has accepted stays accepted as long as its place stands, and no longer.</summary>
public class AcceptanceTests
{
    private const string Id = "salt-slip@parts.dough.salt";
    private static readonly string Salty = Texts.PotatoRollsWith("    salt: 7 g", "    salt: 40 g");

    [Fact]
    public void AcceptedFinding_StandsApart_WithItsReason()
    {
        var judged = SoundAndFaulty.Judge(Accepted(Salty, Id));
        Assert.DoesNotContain(judged.Open, finding => finding.Id == Id);
        Assert.Equal((Id, "for the sea"), Assert.Single(judged.Accepted.Select(one => (one.Finding.Id, one.Reason))));
    }

    [Fact]
    public void AcceptedFinding_IsBack_WhenItsPlaceChanges()
    {
        var judged = SoundAndFaulty.Judge(Accepted(Salty, Id).Replace("salt: 40 g", "salt: 41 g", StringComparison.Ordinal));
        Assert.Contains(judged.Open, finding => finding.Id == Id);
        Assert.Contains(judged.Open, finding => finding.Kind == "acceptance-expired");
        Assert.Empty(judged.Accepted);
    }

    [Fact]
    public void Acceptance_Holds_WhenAnotherPlaceChanges()
    {
        var judged = SoundAndFaulty.Judge(Accepted(Salty, Id).Replace("sugar: 30 g", "sugar: 31 g", StringComparison.Ordinal));
        Assert.Single(judged.Accepted);
    }

    [Fact]
    public void AcceptedTwice_IsWrittenOnce() =>
        Assert.Single(RecipeText.Read(Accepted(Accepted(Salty, Id), Id)).Recipe!.Accepted);

    [Fact]
    public void Acceptance_OfWhatIsPutRight_IsNotNeeded() => Assert.Contains(
        SoundAndFaulty.FindingsIn(Accepted(Salty, Id).Replace("salt: 40 g", "salt: 7 g", StringComparison.Ordinal)), finding => finding.Kind == "acceptance-not-needed");

    [Fact]
    public void Acceptance_OfWhatAnotherCommandFinds_IsLeftAlone()
    {
        var recipe = RecipeText.Read(Accepted(Salty, Id)).Recipe!;
        Assert.Empty(Acceptances.JudgePart([], recipe).Open);
        Assert.NotEmpty(Acceptances.Judge([], recipe).Open);
    }

    [Fact]
    public void SafetyAndErrors_CannotBeAccepted()
    {
        var safety = new Finding { Kind = "warm-for-long", Grade = Grade.Hint, Safety = true, Place = "steps.mash" };
        var error = new Finding { Kind = "circle", Grade = Grade.Error, Place = "parts" };
        var recipe = RecipeText.Read(Salty).Recipe!;
        Assert.All([safety, error], finding =>
        {
            Assert.NotNull(Acceptances.Refusal(finding));
            Assert.Throws<ArgumentException>(() => Acceptances.Accept(recipe, finding, "why not"));
        });
        Assert.Equal("safety-not-acceptable", Acceptances.Judge([safety], recipe with { Accepted = [new(safety.Id, "why not", "", Position.None)] }).Open[^1].Kind);
        Assert.Equal("error-not-acceptable", Acceptances.Judge([error], recipe with { Accepted = [new(error.Id, "why not", "", Position.None)] }).Open[^1].Kind);
    }

    [Fact]
    public void AcceptanceWithoutAReason_IsTold() => Assert.Contains(
        RecipeText.Read(Salty + $"accepted:\n  {Id}:\n    mark: abc\n").Findings, finding => finding.Kind == "accepted-without-reason");

    private static string Accepted(string text, string id)
    {
        var reading = RecipeText.Read(text);
        var finding = SoundAndFaulty.Judge(text) is var judged ? judged.Open.Concat(judged.Accepted.Select(one => one.Finding)).First(found => found.Id == id) : null;
        return RecipeText.Write(Acceptances.Accept(reading.Recipe!, finding!, "for  the\nsea"), reading.Document).Text;
    }
}
