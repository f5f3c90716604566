using System.Text.Json;
using System.Threading.Channels;

namespace SolarEconomics.Workbench;

/// <summary>What waits to be sent to one open page. A page that does not keep up is let go; it comes back and is told everything anew.</summary>
internal sealed class PageLine
{
    private readonly Channel<byte[]> outgoing = System.Threading.Channels.Channel.CreateBounded<byte[]>(new BoundedChannelOptions(256) { SingleReader = true });

    public ChannelReader<byte[]> Outgoing => outgoing.Reader;

    public void Send(PageEvent told) => Send(Written(told));

    public void Send(byte[] written)
    {
        if (!outgoing.Writer.TryWrite(written)) Close();
    }

    public void Close() => outgoing.Writer.TryComplete();

    public static byte[] Written(PageEvent told) => JsonSerializer.SerializeToUtf8Bytes(told, PageJson.Default.PageEvent);
}
