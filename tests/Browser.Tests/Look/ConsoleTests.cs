using System.Net;
using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>The browser has nothing to complain of: no fault, no file missing, no breach of the content policy.</summary>
public class ConsoleTests(House house)
{
    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task Page_LeavesTheConsoleEmpty(string path)
    {
        await using var visit = await house.Visit(path);
        await visit.OpenAll();
        await visit.Page.WaitForTimeoutAsync(300);
        // That a page is not there is what this one is about.
        Assert.DoesNotContain(visit.Troubles, trouble => path != Pages.Nothing || !trouble.Contains("404", StringComparison.Ordinal));
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task ForeignScript_IsNotRun_AndNoted()
    {
        await using var visit = await house.Visit(Pages.Shelf);
        await visit.Page.EvaluateAsync("""
            () => {
              const script = document.createElement('script');
              script.textContent = 'window.ran = true';
              document.body.append(script);
              document.body.insertAdjacentHTML('beforeend', '<p style="color: red" onclick="window.ran = true">text</p>');
            }
            """);
        Assert.False(await visit.Page.EvaluateAsync<bool>("() => 'ran' in window"));
        Assert.Contains(visit.Troubles, trouble => trouble.Contains("Content Security Policy", StringComparison.Ordinal));
    }

    /// <summary>The desk forbids whatever does not name it as its origin; only what does is asked for the token, which this form has not.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task Form_OfTheDesk_NamesItsOrigin()
    {
        await using var visit = await house.Visit(Pages.Shelf);
        // The page goes while it sends, so the script must be over before.
        var answer = await visit.Page.RunAndWaitForResponseAsync(
            () => visit.Page.EvaluateAsync("""
                () => {
                  const form = Object.assign(document.createElement('form'), { method: 'post', action: '/' });
                  document.body.append(form);
                  setTimeout(() => form.submit());
                }
                """),
            answer => answer.Request.Method == "POST");
        Assert.Equal((int)HttpStatusCode.BadRequest, answer.Status);

        using var client = new HttpClient();
        using var nameless = new HttpRequestMessage(HttpMethod.Post, house.Desk.Address) { Headers = { { "Origin", "null" } } };
        using var refused = await client.SendAsync(nameless, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task OtherPage_CannotReadTheDesk_NorFrameIt()
    {
        await using var other = await RunningDesk.Open();
        await using var visit = await house.Visit(Pages.Shelf, address: other.Address);
        var read = await visit.Page.EvaluateAsync<string>("address => fetch(address).then(() => 'read', () => 'refused')", house.Desk.Address);
        Assert.Equal("refused", read);
    }
}
