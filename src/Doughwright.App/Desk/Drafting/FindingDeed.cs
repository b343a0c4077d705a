using Doughwright.App.Commands;
using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What comes of a button beside a finding on the sheet: a changed text, or why there is none.</summary>
/// <param name="Text">Null when nothing is to be written.</param>
/// <param name="Did">What was done, in words.</param>
internal sealed record FindingDeed(string? Text, string Did)
{
    /// <summary>Why nothing is written, where no field is the place for it.</summary>
    public string? Said { get; private init; }

    /// <summary>Why what was typed is not taken.</summary>
    public IReadOnlyList<string> Refused { get; private init; } = [];

    /// <summary>A way out carried out.</summary>
    /// <param name="way">Id of one of the offers.</param>
    public static FindingDeed WayOut(RecipeFile file, WorkedOut worked, string way, Voice voice)
    {
        if (worked.Offers.All.FirstOrDefault(offer => offer.Id == way) is not { } remedy)
        {
            return Gone(voice);
        }

        var (text, verb) = (remedy.CarryOut(file.Text), RemedyWords.Verb(remedy, voice));
        return file.Recipe is not null && RecipeText.Read(text) is not { Understood: true, Recipe: not null }
            ? new(null, "") { Said = voice.Say("write.way-not-carried", ("verb", verb)) }
            : new(text, verb);
    }

    /// <summary>A finding accepted with a reason.</summary>
    /// <param name="id">Of the finding.</param>
    public static FindingDeed Accept(RecipeFile file, WorkedOut worked, string id, string typed, Voice voice)
    {
        if (worked.Acceptable.FirstOrDefault(one => one.Id == id) is not { } finding)
        {
            return Gone(voice);
        }

        var faults = new Faults(voice);
        return AcceptedText.With(file.Text, finding, AcceptedText.Tidy(typed), faults) is { } text
            ? new(text, AcceptedText.Did(finding, voice))
            : new(null, "") { Refused = [.. faults.All.Select(fault => $"{fault.Message} {fault.WayOut}")] };
    }

    /// <summary>A finding accepted no longer.</summary>
    /// <param name="id">Of the finding.</param>
    public static FindingDeed Stop(RecipeFile file, string id, Voice voice) =>
        file is { IsWhole: true, Recipe: { } recipe } && recipe.Accepted.FirstOrDefault(one => one.FindingId == id) is { } accepted
            ? new(AcceptedText.Without(file.Text, id), AcceptedText.DidWithout(accepted, voice))
            : Gone(voice);

    private static FindingDeed Gone(Voice voice) => new(null, "") { Said = voice.Words["write.way-gone"] };
}
