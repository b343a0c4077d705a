using System.Globalization;
using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.States;

/// <summary>The potato rolls on a desk, to be kept and changed.</summary>
public abstract class KeptRolls() : OnADesk(Scratch.WithTheShipped())
{
    private protected const string States = "/recipes/potato-rolls/states";
    private protected const string Sides = "/recipes/potato-rolls/sides";

    private protected long Now => Scratch.Folder.RecipeTexts.Find("potato-rolls")!.State;

    private protected static IHtmlFormElement Form(IHtmlDocument page, string name) =>
        (IHtmlFormElement)page.QuerySelector($"form:has(input[name=_handler][value={name}])")!;

    private protected static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The rolls laid, kept, and then made sweeter with another cue.</summary>
    /// <returns>The state that was kept.</returns>
    private protected async Task<long> KeepAndChange()
    {
        var first = Now;
        var answer = await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", "first bake"), ("note", "tight crumb"));
        Assert.Equal((HttpStatusCode.SeeOther, States), (answer.Status, answer.Location));
        Scratch.Put("potato-rolls", Scratch.Text("potato-rolls").Replace("sugar: 30 g", "sugar: 60 g  # sweeter", StringComparison.Ordinal).Replace("golden all over", "dark all over", StringComparison.Ordinal));
        return first;
    }
}
