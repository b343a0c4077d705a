using System.Net;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Drafting;
using Doughwright.App.Desk.Files;
using Doughwright.App.Desk.Ingredients;
using Doughwright.App.Desk.Layout;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.TheBook;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Doughwright.App.Desk.Hosting;

/// <summary>The desk as a web program on this machine: what it is made of, and what guards it.</summary>
internal static class DeskHost
{
    /// <param name="port">A free port of this machine.</param>
    /// <param name="shelf">With its book open to write; it stays open when the desk is closed.</param>
    /// <param name="key">Seals what is kept; without one, what is kept is good as long as the desk is open.</param>
    public static WebApplication Build(int port, ShelfFolder shelf, Words words, SealKey? key = null)
    {
        // Nothing but what stands here: no settings file, no variable of the environment opens another address or tells more about a fault.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(DeskHost).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseKestrelCore();
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, port, listen => listen.Protocols = HttpProtocols.Http1);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Guards.LargestForm;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        });
        builder.Logging.SetMinimumLevel(LogLevel.Error);
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        AddServices(builder.Services, shelf, words, key ?? SealKey.OfThisDesk());

        var app = builder.Build();
        var refusals = new Refusals(words);
        var guards = new Guards(port, refusals);
        app.UseResponseCompression();
        app.Use(new AnswerHeaders(guards.Hosts).Pass);
        app.Use(guards.Pass);
        app.UseExceptionHandler("/fault", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.Use(new OffShelf(shelf).Pass);
        app.UseAntiforgery();
        app.Use(refusals.Tell);
        app.MapStaticAssets();
        app.MapFiles();
        app.MapRazorComponents<Document>().AddInteractiveServerRenderMode(mode => mode.ContentSecurityFrameAncestorsPolicy = null).AnsweringHead();
        return app;
    }

    private static void AddServices(IServiceCollection services, ShelfFolder shelf, Words words, SealKey key)
    {
        services.AddRouting();
        services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(2));
        // The text of a recipe comes in one piece.
        services.AddRazorComponents().AddInteractiveServerComponents().AddHubOptions(hub => hub.MaximumReceiveMessageSize = Guards.LargestForm);
        // Keys live as long as the desk: a page of yesterday's desk asks to be loaded again.
        services.AddDataProtection().UseEphemeralDataProtectionProvider();
        services.AddAntiforgery(antiforgery =>
        {
            antiforgery.Cookie.Name = "desk";
            antiforgery.Cookie.SameSite = SameSiteMode.Strict;
            antiforgery.Cookie.HttpOnly = true;
        });
        services.AddResponseCompression(compression => compression.MimeTypes = ResponseCompressionDefaults.MimeTypes);
        services.AddSingleton(shelf.Folder);
        services.AddSingleton(words);
        services.AddSingleton(key);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(shelf);
        services.AddHostedService<DailyCopy>();
        services.AddSingleton<ShelfClock>();
        services.AddSingleton<KeptResults>();
        services.AddSingleton<RowKey>();
        services.AddSingleton(typeof(LatestAnswers<>));
        services.AddSingleton<KeptBakes>();
        services.AddSingleton(new OpenDrafts(shelf.Folder.Drafts));
        services.AddSingleton<LeftLines>();
        services.AddSingleton<UsedIn>();
        services.AddSingleton<LastRefusals>();
        services.AddHttpContextAccessor();
        services.AddScoped<Speaker>();
        services.AddScoped<RecipeDesk>();
    }
}
