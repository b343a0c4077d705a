using Doughwright.App.Desk.TheBook;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace Doughwright.App.Desk.Hosting;

/// <summary>
/// What keeps other pages of the browser away from the desk: an exact list of host names (against names that are pointed at this machine), and the
/// origin of everything that changes something, opens a circuit or only wants to know what is there.
/// </summary>
internal sealed class Guards(int port, Refusals refusals)
{
    /// <summary>Bytes of the largest form: a recipe text and its markup.</summary>
    public const long LargestForm = 4 * 1024 * 1024;

    /// <summary>Bytes of the largest export that is sent to the desk: the most that the server takes in one form. A larger one is taken in on the command line.</summary>
    public const long LargestExport = 128 * 1024 * 1024;

    private readonly string[] _hosts = [$"127.0.0.1:{port}", $"localhost:{port}"];

    /// <summary>The names under which the desk answers, each with its port.</summary>
    public IReadOnlyList<string> Hosts => _hosts;

    public Task Pass(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        if (!_hosts.Contains(request.Host.Value, StringComparer.OrdinalIgnoreCase))
        {
            return refusals.OtherName(context, $"http://{_hosts[0]}/");
        }

        if (!IsOwn(request))
        {
            return refusals.OtherPage(context);
        }

        var largest = LargestAt(request.Path);
        if (request.ContentLength > largest)
        {
            return refusals.TooLarge(context);
        }

        if (largest != LargestForm && context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } body)
        {
            body.MaxRequestBodySize = largest;
        }

        return next(context);
    }

    /// <summary>Bytes that may be sent to an address.</summary>
    public static long LargestAt(PathString path) => path == BookAddresses.Page ? LargestExport : LargestForm;

    /// <summary>
    /// Whether a request comes from a page of the desk, as far as it must: a browser names the origin of every form and of every circuit, and says
    /// of everything else where it was asked from. A circuit without an origin is no browser's; a link from elsewhere may lead here.
    /// </summary>
    private static bool IsOwn(HttpRequest request)
    {
        var origin = request.Headers.Origin;
        var isOwnOrigin = origin.Count == 1 && string.Equals(origin[0], $"http://{request.Host.Value}", StringComparison.OrdinalIgnoreCase);
        var isAskedHere = request.Headers["Sec-Fetch-Site"].ToString() is "" or "same-origin" or "none";
        var changes = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);
        if (changes || request.Headers.Upgrade.Count > 0)
        {
            return isOwnOrigin && isAskedHere;
        }

        var follows = request.Headers["Sec-Fetch-Mode"] == "navigate" && request.Headers["Sec-Fetch-Dest"] == "document";
        return (origin.Count == 0 || isOwnOrigin) && (isAskedHere || follows);
    }
}
