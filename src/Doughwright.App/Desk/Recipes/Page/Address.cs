using Microsoft.JSInterop;

namespace Doughwright.App.Desk.Recipes.Page;

/// <summary>Lets the address of a page follow what is set on it, so that a link and a reload show the same.</summary>
internal static class Address
{
    /// <param name="script">Runs in the browser.</param>
    /// <param name="module">Address of the desk's script.</param>
    /// <param name="address">What is to stand in the address line.</param>
    public static async Task Follow(IJSRuntime script, string module, string address)
    {
        try
        {
            await using var desk = await script.InvokeAsync<IJSObjectReference>("import", module);
            await desk.InvokeVoidAsync("setAddress", address);
        }
        catch (JSDisconnectedException)
        {
            // The page is gone; so is its address.
            return;
        }
    }
}
