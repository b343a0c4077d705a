using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.States;
using Doughwright.App.Text;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.TheBook;

/// <summary>The book as a whole: where it lies and what is in it, copied, looked through, written out and taken in.</summary>
public sealed partial class BookPage
{
    private const string Look = "look";
    private const string LeftName = "left";

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    /// <summary>Whether the book is to be looked through now.</summary>
    [SupplyParameterFromQuery(Name = Look)]
    private string? Looked { get; set; }

    /// <summary>The copy that was made just now, by the name of its file.</summary>
    [SupplyParameterFromQuery]
    private string? Made { get; set; }

    /// <summary>By which something is told that was refused where a file was asked for.</summary>
    [SupplyParameterFromQuery]
    private string? Refused { get; set; }

    [Inject]
    private LastRefusals Refusals { get; set; } = null!;

    private string Holds { get; set; } = "";

    private IReadOnlyList<CopyRow> Copies { get; set; } = [];

    private IReadOnlyList<LeftText> Left { get; set; } = [];

    private string Copied { get; set; } = "";

    private BookSaid? Said { get; set; }

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private static string LookAddress => $"{BookAddresses.Page}?{Look}=yes";

    /// <summary>What brings a copy back when the desk is closed.</summary>
    private string BringBack => $"./doughwright book restore --folder \"{Folder.Folder.Root}\"";

    protected override async Task OnInitializedAsync()
    {
        Faults = Refusals.Of(Refused);
        if (HttpMethods.IsGet(Context.Request.Method) && Looked is not null)
        {
            await Carefully(() => Said = BookSaid.Of(BookCommand.Verified(Folder.Book.Path), Voice));
        }

        await Carefully(Lay);
    }

    private void Lay()
    {
        var (size, days) = (Folder.Book.Size(), new StateDays(Clock, Voice));
        Holds = Voice.Say("book-holds", ("papers", size.Papers), ("states", size.States), ("kept", size.Kept), ("photos", size.Photos));
        Copies = [.. AuthorsBook.CopiesOf(Folder.Book.Path).Select(copy => new CopyRow(days.DayAndTime(copy.At), Path.GetFileName(copy.Path)))];
        Left = Folder.Left.All();
        Copied = Made is not null && Copies.Any(copy => copy.File == Made) ? Voice.Say("thebook.copied", ("file", Made)) : "";
    }

    private Task Copy() => Carefully(() =>
        SeeThere(Speaker.To($"{BookAddresses.Page}?made={Uri.EscapeDataString(Path.GetFileName(AuthorsBook.BackUp(Folder.Book.Path, null, Clock)))}")));

    private async Task Forget()
    {
        var file = (await Form())[LeftName].ToString();
        await Carefully(faults =>
        {
            if (Folder.Left.Forget(file))
            {
                SeeThere(Speaker.To(BookAddresses.Page));
            }
            else
            {
                faults.Add("thebook-left-gone", ("file", file));
            }

            return Task.CompletedTask;
        });
    }

    private async Task TakeIn()
    {
        if ((await Form()).Files.GetFile("archive") is not { Length: > 0 } archive)
        {
            var faults = new Faults(Voice);
            faults.Add("thebook-nothing-sent");
            Refuse(faults);
            return;
        }

        await Carefully(async faults =>
        {
            // The archive is looked at where it lies, under the ending by which it is known as one, in a folder that nobody else reads.
            using var folder = TempFolder.Make();
            var beside = await folder.Put("taken-in.zip", stream => archive.CopyToAsync(stream, Context.RequestAborted));
            if (BookCommand.TakenIn(Folder.Book, beside, Path.GetFileName(archive.FileName), faults) is { } done)
            {
                Said = BookSaid.Of(done, Voice);
            }
        });
        await Carefully(Lay);
    }

    private Task Carefully(Action work) => Carefully(_ =>
    {
        work();
        return Task.CompletedTask;
    });

    /// <summary>Does what may be long beside the desk, and tells what the book could not do.</summary>
    private async Task Carefully(Func<Faults, Task> work)
    {
        var faults = new Faults(Voice);
        try
        {
            await Task.Run(() => work(faults), Context.RequestAborted);
        }
        catch (Exception problem) when (BookException.Of(problem, Folder.Folder.Root) is { } told)
        {
            BookFaults.Add(told, faults);
        }

        if (faults.Any)
        {
            Refuse(faults);
        }
    }

    private void Refuse(Faults faults)
    {
        Faults = [.. Faults.Union(faults.All)];
        Refuse();
    }
}
