using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Layout;

/// <summary>A page of the desk that is asked by an address or a form: whose words it speaks, what was asked, and how a form is answered.</summary>
public abstract class DeskPage : ComponentBase
{
    [CascadingParameter]
    private protected HttpContext Context { get; set; } = null!;

    [Inject]
    private protected Speaker Speaker { get; set; } = null!;

    [Inject]
    private protected ShelfFolder Folder { get; set; } = null!;

    [Inject]
    private protected NavigationManager Navigation { get; set; } = null!;

    private protected Voice Voice => Speaker.Voice;

    private protected string Query => Context.Request.QueryString.Value ?? "";

    private protected Task<IFormCollection> Form() => Context.Request.ReadFormAsync(Context.RequestAborted);

    /// <summary>Answers a form that was carried out: the browser looks there next, and asking again carries nothing out again.</summary>
    private protected void SeeThere(string address)
    {
        Context.Response.StatusCode = StatusCodes.Status303SeeOther;
        Context.Response.Headers.Location = address;
    }

    /// <summary>Answers a form that could not be carried out. The page says why.</summary>
    private protected void Refuse() => Context.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
}
