using Doughwright.App.Commands;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>The form on which an own ingredient is written from its label or from two weighings.</summary>
internal sealed class OwnForm
{
    public const string NameKey = "ingredient";

    /// <summary>No state has this number: a form that names none was filled from none.</summary>
    private const long NoState = 0;

    private static readonly (string, string) Grams = ("g", "g");

    private readonly ShelfFolder shelf;
    private readonly Voice voice;

    public OwnForm(ShelfFolder shelf, Voice voice)
    {
        (this.shelf, this.voice) = (shelf, voice);
        Form = new(Plan, voice);
        Form.Fill(new Dictionary<string, string>());
    }

    /// <summary>Which fields it has: every key of the text.</summary>
    public static FormPlan Plan { get; } = new(
        "ingredient",
        [
            new("what", [NameKey, "counts as", "allergens", "piece"]),
            new(
                "label",
                [
                    "fat", "carbohydrate", "total carbohydrate", "carbohydrate without fibre", "of which sugars", "of which lactose", "fibre", "protein", "salt", "sodium", "water", "alcohol",
                    "100 ml weigh",
                ]),
            new("weighings", ["made from", "weighed", "dried"]),
            new("flour", ["lot", "absorption", "ash"]),
        ],
        IngredientText.Keys)
    {
        Choices = key => key == "counts as" ? IngredientText.Roles : null,
        Rare = ["carbohydrate without fibre"],
        Missing = new Dictionary<string, string> { ["own-role-missing"] = "counts as" },
        Units = new Dictionary<string, (string, string)>
        {
            ["piece"] = Grams,
            ["fat"] = Grams,
            ["carbohydrate"] = Grams,
            ["total carbohydrate"] = Grams,
            ["carbohydrate without fibre"] = Grams,
            ["of which sugars"] = Grams,
            ["of which lactose"] = Grams,
            ["fibre"] = Grams,
            ["protein"] = Grams,
            ["salt"] = Grams,
            ["sodium"] = ("mg", "mg"),
            ["water"] = Grams,
            ["alcohol"] = Grams,
            ["ash"] = Grams,
            ["100 ml weigh"] = Grams,
        },
    };

    public PaperForm Form { get; }

    /// <summary>The state that another window wrote, which is told: what is sent from there is taken. Null when none was.</summary>
    public long? Meanwhile { get; private set; }

    /// <summary>Lays what was sent into the book as an ingredient.</summary>
    /// <returns>Address of its page; null when something is refused.</returns>
    public string? Lay(IFormCollection sent) => Text(sent, null) is not var (text, own) ? null
        : Carried(faults => OwnPaper.AddressOf(shelf.IngredientTexts.Lay(TextNames.Of(own.Name, "ingredient"), text, faults.Voice.Words["larder.did-written"])));

    /// <summary>Writes what was sent down as the next state of an ingredient.</summary>
    /// <param name="shown">The state that was shown to the one who changed it.</param>
    public string? Change(OwnPaper paper, long? shown, IFormCollection sent)
    {
        if (Text(sent, paper) is not var (text, _))
        {
            return null;
        }

        return text == paper.Text ? paper.Address : Carried(faults =>
        {
            switch (shelf.IngredientTexts.Write(paper.Name, shown ?? NoState, text, TextDifference.Words(paper.Text, text, voice)))
            {
                case WriteAnswer.Written:
                    return paper.Address;
                case WriteAnswer.Meanwhile meanwhile:
                    Meanwhile = meanwhile.State;
                    Form.TellOther(paper.Title, IngredientText.Read(meanwhile.Text).Document is { } other ? IngredientText.Fields(other) : new Dictionary<string, string>());
                    return null;
                default:
                    faults.Add("paper-gone", ("name", paper.Title));
                    return null;
            }
        });
    }

    /// <summary>The text that was sent; null, and told beside each field, when it cannot be taken.</summary>
    private (string Text, OwnIngredient Own)? Text(IFormCollection sent, OwnPaper? older)
    {
        Form.Take(sent);
        var text = IngredientText.OfFields(Form.Said, older?.Reading.Document);
        var reading = IngredientText.Read(text);
        var isRefused = Form.Tell(reading.Findings);
        if (OwnPaper.All(shelf).Any(other => other.Name != older?.Name && Slug.Of(other.Title) is { Length: > 0 } id && id == Slug.Of(Form[NameKey])))
        {
            Form.Refuse(NameKey, voice.Say("own-name-taken.message", ("name", Form[NameKey])) + " " + voice.Words["own-name-taken.wayOut"]);
            isRefused = true;
        }

        return isRefused || reading.Own is not { } own ? null : (text, own);
    }

    private string? Carried(Func<Faults, string?> write)
    {
        var faults = new Faults(voice);
        string? address = null;
        try
        {
            address = write(faults);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("paper-not-written", ("folder", shelf.IngredientTexts.Path), ("reason", problem.Message));
        }

        Form.Refuse(faults);
        return address;
    }
}
