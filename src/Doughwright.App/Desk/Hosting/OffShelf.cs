using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.States;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Hosting;

/// <summary>Whoever follows an address of a recipe that was taken off the shelf comes to where it is put back.</summary>
internal sealed class OffShelf(ShelfFolder shelf)
{
    private const string Recipes = "/recipes/";

    public Task Pass(HttpContext context, RequestDelegate next)
    {
        var path = context.Request.Path.Value ?? "";
        if ((HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method)) && path.StartsWith(Recipes, StringComparison.Ordinal) && path[Recipes.Length..].Split('/')[0] is { Length: > 0 } name
            && shelf.RecipeTexts.Find(name) is null && shelf.RecipeTexts.CanPutBack(name))
        {
            context.Response.Redirect(TakenOffPage.Of(name));
            return Task.CompletedTask;
        }

        return next(context);
    }
}
