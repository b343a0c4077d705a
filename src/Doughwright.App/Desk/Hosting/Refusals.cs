using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Hosting;

/// <summary>Says in a line of plain text why a request came to nothing, where no page does.</summary>
internal sealed class Refusals(Words words)
{
    private readonly Voice _voice = new(words, MeasureSystem.Metric);

    public Task OtherName(HttpContext context, string address) =>
        Say(context, StatusCodes.Status400BadRequest, _voice.Say("hosting.other-name", ("address", address)));

    public Task OtherPage(HttpContext context) => Say(context, StatusCodes.Status403Forbidden, words["hosting.other-page"]);

    public Task TooLarge(HttpContext context) =>
        Say(context, StatusCodes.Status413PayloadTooLarge, _voice.Say("hosting.too-large", ("limit", $"{Guards.LargestAt(context.Request.Path) / 1024 / 1024}")));

    /// <summary>Stops a form whose token is not this desk's, and gives words to what the server itself refuses. What lies nowhere has a page of its own.</summary>
    public async Task Tell(HttpContext context, RequestDelegate next)
    {
        if (context.Features.Get<IAntiforgeryValidationFeature>() is { IsValid: false, Error: not null } checkedForm)
        {
            await (checkedForm.Error.InnerException is BadHttpRequestException { StatusCode: StatusCodes.Status413PayloadTooLarge }
                ? TooLarge(context)
                : Say(context, StatusCodes.Status400BadRequest, words["hosting.form-refused"]));
            return;
        }

        await next(context);
        if (context.Response is { HasStarted: false, ContentType: null, StatusCode: StatusCodes.Status405MethodNotAllowed })
        {
            await Say(context, StatusCodes.Status405MethodNotAllowed, words["hosting.method"]);
        }
    }

    private static Task Say(HttpContext context, int status, string why)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(why + "\n");
    }
}
