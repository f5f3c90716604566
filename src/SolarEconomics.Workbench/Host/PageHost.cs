using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace SolarEconomics.Workbench;

/// <summary>Serves the page to this machine only: a free loopback port, a doorkeeper before everything, a few routes behind it.</summary>
internal sealed class PageHost : IAsyncDisposable
{
    private readonly WebApplication web;
    private readonly Doorkeeper door;
    private readonly Room room;
    private readonly NotebookDesk desk;

    private PageHost(WebApplication web, Doorkeeper door, Room room, NotebookDesk desk) => (this.web, this.door, this.room, this.desk) = (web, door, room, desk);

    /// <summary>Where the page is served, without the token.</summary>
    public Uri Base => new($"http://127.0.0.1:{door.Port}/");

    /// <summary>Starts serving; the desk is closed with the host.</summary>
    public static async Task<PageHost> StartAsync(Room room, NotebookDesk desk, CancellationToken stop)
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 0;
            kestrel.Limits.MaxRequestLineSize = 4096;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16384;
            kestrel.Listen(IPAddress.Loopback, 0);
        });
        var web = builder.Build();
        var door = new Doorkeeper();
        var files = new PageFiles(Path.Combine(AppContext.BaseDirectory, "wwwroot"));
        web.UseWebSockets(new WebSocketOptions { KeepAliveInterval = TimeSpan.FromSeconds(20) });
        web.Use((context, next) => door.Ask(context, () => next(context)));
        web.Run(context => Answer(context, files, room, desk));
        await web.StartAsync(stop);
        door.Port = new Uri(web.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single()).Port;
        return new PageHost(web, door, room, desk);
    }

    /// <summary>The address that lets one browser in: the list of notebooks, or one of them.</summary>
    public string AddressFor(string? notebook) =>
        $"{Base}?token={door.Token}" + (notebook is null ? "" : $"&notebook={Uri.EscapeDataString(room.NameOf(notebook))}");

    public async Task UntilStopped(CancellationToken stop)
    {
        try { await Task.Delay(Timeout.Infinite, stop); }
        catch (OperationCanceledException) { LocalLog.Current.Write("stopped from the terminal"); }
    }

    private static Task Answer(HttpContext context, PageFiles files, Room room, NotebookDesk desk) => context.Request.Path.Value switch
    {
        "/" => Show(context, files, room, desk),
        "/notebooks.json" => context.Response.WriteAsJsonAsync(Shelf.In(room), PageJson.Default.IReadOnlyListShelfEntry),
        "/talk" => PageTalk.Talk(context, room, desk),
        "/table.json" => PageTables.Show(context, room, desk),
        "/table.csv" => PageTables.Keep(context, room, desk),
        "/copy" => PageKeeping.Copy(context, room, desk),
        "/report" => PageKeeping.Report(context, room, desk),
        var path => files.Answer(context, path ?? "/"),
    };

    private static async Task Show(HttpContext context, PageFiles files, Room room, NotebookDesk desk) =>
        await files.Answer(context, "/", await FirstLook.Of(context, room, desk));

    public async ValueTask DisposeAsync()
    {
        await desk.DisposeAsync();
        await web.StopAsync(new CancellationTokenSource(TimeSpan.FromSeconds(2)).Token);
        await web.DisposeAsync();
    }
}
