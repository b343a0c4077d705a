using System.Net;
using System.Text;
using AngleSharp.Html.Dom;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Search;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Desk.Notes;

/// <summary>Teaching notes on the desk: listed, written, taken back, read inside a recipe, found, carried out and in.</summary>
public sealed class NotePagesTests
{
    private const string Scalding = "/notes/scalding";

    private static IHtmlFormElement Form(IHtmlDocument page, string name) =>
        (IHtmlFormElement)page.QuerySelector($"form:has(input[name=_handler][value={name}])")!;

    private static string Said(IHtmlDocument page) => page.QuerySelector("main")!.TextContent.Replace('\u00a0', ' ');

    private static string Text(Scratch scratch, string name = "scalding") => Encoding.UTF8.GetString(scratch.Folder.NoteTexts.Read(name)!);

    [Fact]
    public async Task NewBook_HasTheDemoNotes_LinkedFromTheDemoRecipes_AndAnOwnFolderGetsNone()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(["dough-temperature", "reading-a-proof", "scalding"], scratch.Folder.NoteTexts.Names());
        var page = await desk.Page("/notes");
        Assert.Equal(["Dough temperature", "Reading a proof", "Scalding"], page.QuerySelectorAll(".offs h2").Select(head => head.TextContent));
        Assert.DoesNotContain("No recipe links", Said(page), StringComparison.Ordinal);
        Assert.DoesNotContain('[', page.QuerySelector(".offs")!.TextContent);
        Assert.Contains("Between 25 °C and 28 °C", Said(page), StringComparison.Ordinal);
        Assert.Contains("Between 77 °F and 82 °F", Said(await desk.Page("/notes?measures=us")), StringComparison.Ordinal);
        Assert.Contains("/notes", (await desk.Page("/")).QuerySelectorAll("main a").Select(link => link.GetAttribute("href")!.TrimStart('/').Insert(0, "/")));
        using var own = new Scratch();
        Assert.Empty(own.Folder.NoteTexts.Names());
    }

    [Fact]
    public async Task Recipe_OpensTheNoteAtItsStep_WithItsOwnValues()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/potato-rolls");
        var notes = page.QuerySelectorAll(".method details.learn").ToArray();
        Assert.Equal(["Scalding", "Dough temperature", "Reading a proof"], notes.Select(note => note.QuerySelector("summary")!.TextContent));
        Assert.Contains("180 g", notes[0].TextContent.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.All(notes, note => Assert.NotNull(note.QuerySelector("svg")));
        Assert.Equal("/notes/scalding?recipe=potato-rolls&step=scald", notes[0].QuerySelector("a")!.GetAttribute("href"));
        // In another kitchen the values are of that kitchen.
        var away = await desk.Page("/recipes/potato-rolls?kitchen=winter-cottage");
        Assert.NotEqual(notes[2].TextContent, away.QuerySelectorAll(".method details.learn")[2].TextContent);
    }

    [Fact]
    public async Task WrittenNote_IsAState_UndoneAndDoneAgain()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var was = Text(scratch);
        var answer = await desk.Send(Form(await desk.Page(Scalding), "write"), ("text", "# Scalding\r\n\r\nIn [this part]: [this weight].\r\n"));
        Assert.Equal((HttpStatusCode.SeeOther, Scalding), (answer.Status, answer.Location));
        Assert.Equal("# Scalding\n\nIn [this part]: [this weight].\n", Text(scratch));
        Assert.Contains("In Scald: 180 g.", Said(await desk.Page(Scalding)), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(await desk.Page(Scalding), "step"), ("way", "undo"))).Status);
        Assert.Equal(was, Text(scratch));
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(await desk.Page(Scalding), "step"), ("way", "redo"))).Status);
        Assert.Contains("[this weight]", Text(scratch), StringComparison.Ordinal);
    }

    [Fact]
    public async Task NoteInAnotherRecipe_SaysWhatThatRecipeHasNot()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Contains("Scald the flour with milk", Said(await desk.Page(Scalding + "?recipe=tin-loaf")), StringComparison.Ordinal);
        var elsewhere = Said(await desk.Page(Scalding + "?recipe=pilot-ring"));
        Assert.Contains("No step of this recipe links to it", elsewhere, StringComparison.Ordinal);
        Assert.Contains("(not worked out here, because “this weight” has a value only at a step", elsewhere, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/notes/nowhere")).StatusCode);
    }

    [Fact]
    public async Task ChangedMeanwhile_ShowsBoth_AndWritesNothing()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var form = Form(await desk.Page(Scalding), "write");
        Shelves.Put(scratch.Folder.NoteTexts, "scalding", "# Scalding\n\nTheirs.\n");
        var answer = await desk.Send(form, ("text", "# Scalding\n\nMine.\n"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(["# Scalding\n\nMine.\n", "# Scalding\n\nTheirs.\n"], answer.Page.QuerySelectorAll("textarea").Cast<IHtmlTextAreaElement>().Select(field => field.Value));
        Assert.Contains("Theirs", Text(scratch), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(answer.Page, "write"), ("text", "# Scalding\n\nMine.\n"))).Status);
        Assert.Contains("Mine", Text(scratch), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TooLongText_StaysInItsField_AndHarmIsText()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var was = Text(scratch);
        var answer = await desk.Send(Form(await desk.Page(Scalding), "write"), ("text", new string('a', 40_000)));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(40_000, ((IHtmlTextAreaElement)answer.Page.QuerySelector("#note-text")!).Value.Length);
        Assert.Equal(was, Text(scratch));
        await desk.Send(Form(await desk.Page(Scalding), "write"), ("text", "# <b>T</b>\n\n</textarea><script>alert(1)</script> [<i>x</i>]\n"));
        var page = await desk.Page(Scalding);
        Assert.Equal("<b>T</b>", page.QuerySelector("h1")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("main script, main i"));
    }

    [Fact]
    public async Task Note_IsBegunTakenAwayAndPutBack()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(Form(await desk.Page("/notes"), "begin"), ("title", "  "))).Status);
        var begun = await desk.Send(Form(await desk.Page("/notes"), "begin"), ("title", "Why salt goes in late"));
        Assert.Equal("/notes/why-salt-goes-in-late", begun.Location);
        Assert.Contains("learn: why salt goes in late", Said(await desk.Page(begun.Location!)), StringComparison.Ordinal);
        var away = await desk.Send(Form(await desk.Page("/notes"), "move"), ("away", "scalding"));
        Assert.Equal("/notes?taken=scalding", away.Location);
        Assert.DoesNotContain("scalding", scratch.Folder.NoteTexts.Names());
        // The links of the recipes lead nowhere now, and say so.
        Assert.Contains("links to the note “scalding”", Said(await desk.Page("/recipes/potato-rolls")), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(await desk.Page(away.Location!), "move"), ("back", "scalding"))).Status);
        Assert.DoesNotContain("links to the note", Said(await desk.Page("/recipes/potato-rolls")), StringComparison.Ordinal);
    }

    [Fact]
    public void CommandLine_FindsAMissingNoteInABookOnly()
    {
        using var scratch = Scratch.WithTheShipped();
        Assert.DoesNotContain("note-not-in-book", Run.Of("findings", scratch.Folder.RecipeTexts.FileOf("potato-rolls"), "--json").Output, StringComparison.Ordinal);
        scratch.Folder.NoteTexts.TakeAway("scalding");
        Assert.Contains("note-not-in-book", Run.Of("findings", scratch.Folder.RecipeTexts.FileOf("potato-rolls"), "--json").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("note-not-in-book", Run.Of("findings", House.PotatoRolls, "--json").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Search_FindsANoteByItsTitleAndItsWords_AndLeadsThere()
    {
        using var scratch = Scratch.WithTheShipped();
        var found = Finder.Find(scratch.Folder, "wheat starch").First(paper => paper.Sort == PaperSort.Note);
        Assert.Equal(("Scalding", Scalding), (found.Title, found.Address));
        Assert.Contains(Finder.Find(scratch.Folder, "scalding"), paper => paper.Sort == PaperSort.Note && paper.InTitle);
    }

    [Fact]
    public void ExportedBook_CarriesItsNotes_WithTheirStates()
    {
        using var scratch = Scratch.WithTheShipped();
        Shelves.Put(scratch.Folder.NoteTexts, "scalding", "# Scalding\n\nOnce more.\n");
        var outside = Path.Join(scratch.Data.Root, "out");
        scratch.Folder.Book.Export(outside);
        Assert.Equal("# Scalding\n\nOnce more.\n", File.ReadAllText(Path.Join(outside, "notes", "scalding.md")));
        using var other = AuthorsBook.Open(Path.Join(scratch.Data.Root, "other.db"), TimeProvider.System);
        Assert.True(other.Import(outside, ImportedPhotos.Look).Done);
        Assert.Equal("# Scalding\n\nOnce more.\n", other.Papers.Text(PaperSort.Note, "scalding"));
        Assert.Equal(2, other.Papers.States(PaperSort.Note, "scalding").Count);
    }
}
