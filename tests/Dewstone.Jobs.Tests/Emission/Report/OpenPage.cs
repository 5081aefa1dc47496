using System.Collections.Concurrent;
using PuppeteerSharp;

namespace Dewstone.Jobs.Tests.Emission.Report;

/// <summary>A page open in the browser, with what it complained of and what it wanted to fetch.</summary>
internal sealed class OpenPage(IPage page) : IAsyncDisposable
{
    /// <summary>The page.</summary>
    public IPage Page => page;

    /// <summary>Errors and warnings of the console, and faults that nothing caught.</summary>
    public ConcurrentQueue<string> Complaints { get; } = new();

    /// <summary>Addresses asked for, the page's own first.</summary>
    public ConcurrentQueue<string> Requests { get; } = new();

    /// <summary>Starts to listen. Every request but that for a file is stopped.</summary>
    /// <returns>When it listens.</returns>
    public async Task WatchAsync()
    {
        page.Console += (_, said) =>
        {
            if (said.Message.Type is ConsoleType.Error or ConsoleType.Warning)
            {
                Complaints.Enqueue(said.Message.Text);
            }
        };
        page.PageError += (_, fault) => Complaints.Enqueue(fault.Message);
        await page.SetRequestInterceptionAsync(true);
        page.AddRequestInterceptor(async request =>
        {
            // What stands in the page itself is no fetch.
            if (!request.Url.StartsWith("data:", StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal))
            {
                Requests.Enqueue(request.Url);
            }

            if (request.Url.StartsWith("http", StringComparison.Ordinal))
            {
                await request.AbortAsync();
            }
            else
            {
                await request.ContinueAsync();
            }
        });
    }

    /// <summary>Chooses between screen and paper, light and dark: one order of the debugging protocol, since each replaces the last whole.</summary>
    /// <param name="onPaper">Shown as it is printed.</param>
    /// <param name="dark">Whether the user prefers a dark page.</param>
    /// <returns>When it is chosen.</returns>
    public Task ShowAsync(bool onPaper, bool dark) => page.Client.SendAsync("Emulation.setEmulatedMedia", new
    {
        media = onPaper ? "print" : "screen",
        features = new[] { new { name = "prefers-color-scheme", value = dark ? "dark" : "light" } },
    });

    /// <summary>Waits until a script's answer is true.</summary>
    /// <param name="script">An expression.</param>
    /// <returns>When it is.</returns>
    public Task UntilAsync(string script) => page.WaitForExpressionAsync(script);

    /// <summary>A script's answer.</summary>
    /// <typeparam name="T">What it is.</typeparam>
    /// <param name="script">An expression.</param>
    /// <returns>The answer.</returns>
    public Task<T> AskAsync<T>(string script) => page.EvaluateExpressionAsync<T>(script);

    /// <summary>What a part looks like now.</summary>
    /// <param name="selector">CSS selector of one part.</param>
    /// <returns>Its picture as text.</returns>
    public async Task<string> LookAsync(string selector)
    {
        IElementHandle part = await page.QuerySelectorAsync(selector);
        return Convert.ToBase64String(await part.ScreenshotDataAsync());
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await page.DisposeAsync();
}
