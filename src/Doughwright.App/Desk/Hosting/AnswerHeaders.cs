using System.Globalization;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Hosting;

/// <summary>
/// Headers of every answer, refusals and faults included: nothing but the desk's own files runs, no other page sees what is answered, and
/// no page is kept by the browser, because what it shows changes with the folder.
/// </summary>
internal sealed class AnswerHeaders
{
    private const string Fonts = "/fonts";

    private static readonly string WeekOfSeconds = TimeSpan.FromDays(7).TotalSeconds.ToString(CultureInfo.InvariantCulture);

    private readonly string _policy;

    private const string OwnPolicy = "own-policy";

    /// <summary>Lets an answer be shown inside a page of the desk, under a policy of its own.</summary>
    public static void AllowInside(HttpContext context, string policy) => context.Items[OwnPolicy] = policy;

    public AnswerHeaders(IReadOnlyList<string> hosts) => _policy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
        + $"connect-src 'self' {string.Join(' ', hosts.Select(host => $"ws://{host}"))}; "
        + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public Task Pass(HttpContext context, RequestDelegate next)
    {
        // Only when the answer starts: a fault on the way empties the headers.
        context.Response.OnStarting(() =>
        {
            Put(context);
            return Task.CompletedTask;
        });
        return next(context);
    }

    private void Put(HttpContext context)
    {
        var headers = context.Response.Headers;
        var inside = context.Response.StatusCode == StatusCodes.Status200OK ? context.Items[OwnPolicy] as string : null;
        headers.ContentSecurityPolicy = inside ?? _policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = inside is null ? "DENY" : "SAMEORIGIN";
        // Not "no-referrer": under that a browser calls the origin of the desk's own forms "null".
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (context.Response.StatusCode >= StatusCodes.Status400BadRequest || headers.CacheControl.Count == 0 || IsPage(context.Response))
        {
            headers.CacheControl = "no-store";
        }
        else if (context.Request.Path.StartsWithSegments(Fonts))
        {
            // The sheet names fonts without a mark of their content, so they are not kept for good.
            headers.CacheControl = $"max-age={WeekOfSeconds}";
        }
    }

    private static bool IsPage(HttpResponse response) => response.ContentType?.StartsWith("text/html", StringComparison.OrdinalIgnoreCase) == true;
}
