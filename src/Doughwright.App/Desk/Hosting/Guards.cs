using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Primitives;

namespace Doughwright.App.Desk.Hosting;

/// <summary>
/// What keeps other pages of the browser away from the desk: an exact list of host names (against names that are pointed at this machine), the
/// origin of everything that changes something or opens a circuit, and headers under which nothing but the desk's own files runs.
/// </summary>
internal static class Guards
{
    /// <summary>Bytes of the largest form: a recipe text and its markup.</summary>
    public const long LargestForm = 4 * 1024 * 1024;

    private const string Circuit = "/_blazor";

    public static Func<HttpContext, RequestDelegate, Task> For(int port)
    {
        string[] hosts = [$"127.0.0.1:{port}", $"localhost:{port}"];
        var policy = new StringValues(
            "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
            + $"connect-src 'self' {string.Join(' ', hosts.Select(host => $"ws://{host}"))}; "
            + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'");
        return (context, next) =>
        {
            var request = context.Request;
            if (!hosts.Contains(request.Host.Value, StringComparer.OrdinalIgnoreCase))
            {
                context.Response.StatusCode = StatusCodes.Status400BadRequest;
                return Task.CompletedTask;
            }

            if (!IsOwn(request))
            {
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
                return Task.CompletedTask;
            }

            var headers = context.Response.Headers;
            headers.ContentSecurityPolicy = policy;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            return next(context);
        };
    }

    /// <summary>
    /// Whether a request comes from a page of the desk, as far as it must: a browser names the origin of every form and of every circuit. A circuit
    /// without an origin is no browser's.
    /// </summary>
    private static bool IsOwn(HttpRequest request)
    {
        var own = $"http://{request.Host.Value}";
        var origin = request.Headers.Origin;
        var fetched = request.Headers["Sec-Fetch-Site"].ToString();
        var changes = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);
        var opensCircuit = request.HttpContext.WebSockets.IsWebSocketRequest
            || (request.Path.StartsWithSegments(Circuit) && request.Headers.Upgrade.Count > 0);
        if (changes || opensCircuit)
        {
            return origin.Count == 1 && string.Equals(origin[0], own, StringComparison.OrdinalIgnoreCase) && fetched is "" or "same-origin";
        }

        return origin.Count == 0 || string.Equals(origin[0], own, StringComparison.OrdinalIgnoreCase);
    }
}
