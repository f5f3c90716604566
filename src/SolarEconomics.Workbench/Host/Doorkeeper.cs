using System.Net;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace SolarEconomics.Workbench;

/// <summary>Lets in the one browser that was given the address, and nobody else: no other page, program or name for this machine.</summary>
/// <remarks>Every request passes three questions in this order: is it addressed to us by our own name (a foreign Host is DNS rebinding),
/// does it come from our own page (a foreign Origin is another site posting), and does it carry the cookie that the one-time token was turned into.</remarks>
internal sealed class Doorkeeper
{
    private readonly Lock gate = new();
    private readonly string cookie = NewSecret();
    private string? token = NewSecret();

    /// <summary>The port served; the cookie's name carries it, as cookies do not tell ports apart.</summary>
    public int Port { get; set; }

    /// <summary>The token that is still unused; null once a browser was let in.</summary>
    public string? Token => token;

    private string CookieName => $"workbench-{Port}";

    public async Task Ask(HttpContext context, Func<Task> next)
    {
        var request = context.Request;
        if (!IsOurName(request.Host)) { await Refuse(context, $"Found the name \"{request.Host}\", expected {OurName}. Use the address that the program printed."); return; }
        if (!IsOurOrigin(request)) { await Refuse(context, "The request comes from another page. Only this program's own page may ask."); return; }
        if (request.Query["token"] is [{ Length: > 0 } given]) { await TurnIntoCookie(context, given); return; }
        if (!Same(request.Cookies[CookieName] ?? "", cookie))
        {
            await Refuse(context, "This browser has not been let in. Use the address that the program printed; it works once. For another browser, start the program again.");
            return;
        }
        await next();
    }

    private async Task TurnIntoCookie(HttpContext context, string given)
    {
        bool fits;
        lock (gate)
        {
            fits = token is not null && Same(given, token);
            if (fits) token = null;
        }
        var letInBefore = Same(context.Request.Cookies[CookieName] ?? "", cookie);
        if (!fits && !letInBefore) { await Refuse(context, "This address was used before or belongs to an earlier start. Start the program again for a new one."); return; }
        if (fits) context.Response.Cookies.Append(CookieName, cookie, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/" });
        var others = context.Request.Query.Where(pair => pair.Key != "token").SelectMany(pair => pair.Value.Select(value => KeyValuePair.Create(pair.Key, value)));
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = "/" + QueryString.Create(others).Value;
    }

    private string OurName => $"127.0.0.1:{Port}";

    private bool IsOurName(HostString host) => host.Value == OurName || host.Value == $"localhost:{Port}";

    private static bool IsOurOrigin(HttpRequest request)
    {
        // Browsers say which page led here, even where a request carries no Origin.
        if (request.Headers["Sec-Fetch-Site"] is [{ } from] && from is "cross-site" or "same-site" && !request.Query.ContainsKey("token")) return false;
        var origins = request.Headers.Origin;
        if (origins.Count == 0) return !request.HttpContext.WebSockets.IsWebSocketRequest && HttpMethods.IsGet(request.Method);
        return origins is [{ } only] && only == $"http://{request.Host.Value}";
    }

    private static bool Same(string a, string b) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(a), Encoding.UTF8.GetBytes(b));

    private static string NewSecret() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));

    private static Task Refuse(HttpContext context, string words)
    {
        context.Response.StatusCode = (int)HttpStatusCode.Forbidden;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(words);
    }
}
