using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Doughwright.App.Desk.Hosting;

/// <summary>What is answered when it is got is answered when only its head is asked for: the server leaves the rest away.</summary>
internal static class HeadAsGet
{
    public static T AnsweringHead<T>(this T endpoints) where T : IEndpointConventionBuilder
    {
        endpoints.Add(endpoint =>
        {
            if (endpoint.Metadata.OfType<IHttpMethodMetadata>().LastOrDefault() is { } asked && asked.HttpMethods.Contains(HttpMethods.Get) && !asked.HttpMethods.Contains(HttpMethods.Head))
            {
                endpoint.Metadata.Add(new HttpMethodMetadata([.. asked.HttpMethods, HttpMethods.Head]));
            }
        });
        return endpoints;
    }
}
