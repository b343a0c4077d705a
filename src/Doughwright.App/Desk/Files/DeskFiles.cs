using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Photos;
using Doughwright.App.Desk.Preview;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.TheBook;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Net.Http.Headers;

namespace Doughwright.App.Desk.Files;

/// <summary>What the desk gives as files: the page for readers, and pictures. They are the bytes that the command line writes.</summary>
internal static class DeskFiles
{
    private const string Name = "name";

    /// <summary>Digits of the names that texts give photos: shorter ones could be guessed.</summary>
    private const int ShortestPhotoName = 16;

    public static void MapFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet(PageAddress.Route, PageFor).AnsweringHead();
        app.MapGet(PictureAddress.Route, PictureFor).AnsweringHead();
        app.MapGet(PhotoAddress.Route, PhotoFor).AnsweringHead();
        app.MapGet(BookAddresses.Export, BookWrittenOut).AnsweringHead();
    }

    /// <summary>The page for readers, to be looked at or to be saved. What of the address was refused is told by the page of the desk around it.</summary>
    private static Task PageFor(HttpContext context)
    {
        var query = context.Request.QueryString.Value ?? "";
        if (PageAsked.Of(NameOf(context), query, ShelfOf(context), WordsOf(context)) is not { } asked)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return Task.CompletedTask;
        }

        var made = asked.Made();
        AnswerHeadersOf(context, made.Policy);
        return Give(context, "text/html; charset=utf-8", made.Page.Bytes, context.Request.Query.ContainsKey(PageAddress.Save) ? made.FileName : null);
    }

    private static async Task PictureFor(HttpContext context)
    {
        var asked = PictureFileAsked.Of(NameOf(context), context.Request.QueryString.Value ?? "", ShelfOf(context), WordsOf(context));
        if (asked is null)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        // A painted picture takes a moment, and nothing waits for it.
        var made = asked.Refused.Length > 0 ? null : await Task.Run(asked.Made, context.RequestAborted);
        if (made is null)
        {
            context.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
            context.Response.ContentType = "text/plain; charset=utf-8";
            await context.Response.WriteAsync(asked.Refused + "\n", context.RequestAborted);
            return;
        }

        await Give(context, asked.ContentType, made.Bytes, asked.FileName);
    }

    /// <summary>A photo of the book. What stands under a hash never changes, so the browser keeps it.</summary>
    private static async Task PhotoFor(HttpContext context)
    {
        if (NameOf(context) is not { Length: >= ShortestPhotoName } name || ShelfOf(context).Book.Photos.Find(name) is not { } photo)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        context.Response.ContentType = photo.Type;
        context.Response.ContentLength = photo.Bytes.Length;
        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        await context.Response.Body.WriteAsync(photo.Bytes, context.RequestAborted);
    }

    /// <summary>The whole book as plain files in an archive. What keeps it from being written is told on the page that asks for it.</summary>
    private static async Task BookWrittenOut(HttpContext context)
    {
        try
        {
            await WriteOut(context);
        }
        catch (BookException problem) when (!context.Response.HasStarted)
        {
            var faults = new Faults(new(WordsOf(context), MeasureNames.Of(context.Request.Query[Question.Measures])));
            BookFaults.Add(problem, faults);
            context.Response.Redirect(ShelfAddress.InMeasures(BookAddresses.Refused(context.RequestServices.GetRequiredService<LastRefusals>().Add(faults.All)), faults.Voice));
        }
    }

    private static async Task WriteOut(HttpContext context)
    {
        using var folder = TempFolder.Make();
        var archive = folder.File("book.zip");
        var (path, clock) = (ShelfOf(context).Book.Path, context.RequestServices.GetRequiredService<TimeProvider>());
        await Task.Run(
            () =>
            {
                // A book of its own to read from: what is typed meanwhile does not wait for the archive.
                using var book = AuthorsBook.OpenToRead(path, clock);
                book.Export(archive);
            },
            context.RequestAborted);
        context.Response.ContentType = "application/zip";
        context.Response.Headers.CacheControl = "no-store";
        NameFile(context.Response, FormattableString.Invariant($"doughwright-{context.RequestServices.GetRequiredService<ShelfClock>().Now:yyyy-MM-dd}.zip"));
        await context.Response.SendFileAsync(archive, context.RequestAborted);
    }

    private static void AnswerHeadersOf(HttpContext context, string policy) => Hosting.AnswerHeaders.AllowInside(context, policy);

    /// <param name="fileName">Name under which a browser saves it; null for what it shows.</param>
    private static async Task Give(HttpContext context, string type, byte[] bytes, string? fileName)
    {
        var response = context.Response;
        response.ContentType = type;
        response.ContentLength = bytes.Length;
        response.Headers.CacheControl = "no-store";
        if (fileName is not null)
        {
            NameFile(response, fileName);
        }

        await response.Body.WriteAsync(bytes, context.RequestAborted);
    }

    private static void NameFile(HttpResponse response, string fileName)
    {
        var disposition = new ContentDispositionHeaderValue("attachment");
        disposition.SetHttpFileName(fileName);
        response.Headers.ContentDisposition = disposition.ToString();
    }

    private static string NameOf(HttpContext context) => context.Request.RouteValues[Name] as string ?? "";

    private static ShelfFolder ShelfOf(HttpContext context) => context.RequestServices.GetRequiredService<ShelfFolder>();

    private static Words WordsOf(HttpContext context) => context.RequestServices.GetRequiredService<Words>();
}
