using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>The form on which a kitchen is made and changed: every key of its text.</summary>
internal sealed class KitchenForm
{
    public const string NameKey = "kitchen";

    /// <summary>No state has this number: a form that names none was filled from none.</summary>
    private const long NoState = 0;

    private static readonly (string, string) Degrees = ("C", "F");
    private static readonly (string, string) Minutes = ("min", "min");

    private readonly ShelfFolder shelf;
    private readonly Voice voice;

    public KitchenForm(ShelfFolder shelf, Voice voice)
    {
        (this.shelf, this.voice) = (shelf, voice);
        Form = new(Plan, voice);
        Form.Fill(new Dictionary<string, string>());
    }

    /// <summary>Which fields it has.</summary>
    public static FormPlan Plan { get; } = new(
        "kitchen",
        [
            new("room", [NameKey, "air", "altitude", "ingredients", "tap", "fridge", "proofing place"]),
            new("stove", ["oven", "oven runs", "oven heats in", "oven recovers in", "oven steam", "hearth"]),
            new("things", ["trays", "scale", "vessels"]),
        ],
        KitchenText.Keys)
    {
        Choices = KitchenText.Choices,
        Long = ["vessels"],
        Missing = new Dictionary<string, string> { ["kitchen-name-missing"] = NameKey, ["air-missing"] = "air" },
        Units = new Dictionary<string, (string, string)>
        {
            ["air"] = Degrees,
            ["altitude"] = ("m", "ft"),
            ["ingredients"] = Degrees,
            ["tap"] = Degrees,
            ["fridge"] = Degrees,
            ["proofing place"] = Degrees,
            ["oven heats in"] = Minutes,
            ["oven recovers in"] = Minutes,
            ["scale"] = ("g", "g"),
        },
    };

    public PaperForm Form { get; }

    /// <summary>The state that another window wrote, which is told: what is sent from there is taken. Null when none was.</summary>
    public long? Meanwhile { get; private set; }

    /// <summary>Lays what was sent into the book as a kitchen.</summary>
    /// <returns>Its name there; null when something is refused.</returns>
    public string? Lay(IFormCollection sent) => Text(sent, null) is not { } text ? null
        : Carried(faults => shelf.KitchenTexts.Lay(TextNames.Of(Form[NameKey], "kitchen"), text, faults.Voice.Words["kitchens.did-written"]));

    /// <summary>Writes what was sent down as the next state of a kitchen.</summary>
    /// <param name="shown">The state that was shown to the one who changed it.</param>
    public string? Change(Paper paper, long? shown, IFormCollection sent)
    {
        var before = Encoding.UTF8.GetString(shelf.KitchenTexts.Read(paper));
        if (Text(sent, paper.Name) is not { } text)
        {
            return null;
        }

        return text == before ? paper.Name : Carried(faults =>
        {
            switch (shelf.KitchenTexts.Write(paper.Name, shown ?? NoState, text, TextDifference.Words(before, text, voice)))
            {
                case WriteAnswer.Written:
                    return paper.Name;
                case WriteAnswer.Meanwhile meanwhile:
                    Meanwhile = meanwhile.State;
                    Form.TellOther(Form[NameKey], KitchenText.Read(meanwhile.Text).Document is { } other ? KitchenText.Fields(other) : new Dictionary<string, string>());
                    return null;
                default:
                    faults.Add("paper-gone", ("name", Form[NameKey]));
                    return null;
            }
        });
    }

    private string? Text(IFormCollection sent, string? own)
    {
        Form.Take(sent);
        var older = own is not null && shelf.Kitchen(own) is { } bytes ? KitchenText.Read(Encoding.UTF8.GetString(bytes)).Document : null;
        var text = KitchenText.OfFields(Form.Said, older);
        var isRefused = Form.Tell(KitchenText.Read(text).Findings);
        if (Form[NameKey].Length > 0)
        {
            var naming = new Faults(voice);
            KitchenNaming.Check(Form[NameKey], [.. KitchenOnShelf.All(shelf).Where(kitchen => kitchen.Name != own)], naming);
            foreach (var fault in naming.All)
            {
                Form.Refuse(NameKey, $"{fault.Message} {fault.WayOut}");
                isRefused = true;
            }
        }

        return isRefused ? null : text;
    }

    private string? Carried(Func<Faults, string?> write)
    {
        var faults = new Faults(voice);
        string? name = null;
        try
        {
            name = write(faults);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("paper-not-written", ("folder", shelf.KitchenTexts.Path), ("reason", problem.Message));
        }

        Form.Refuse(faults);
        return name;
    }
}
