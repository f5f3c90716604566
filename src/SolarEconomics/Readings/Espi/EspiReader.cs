using System.Globalization;
using System.Xml;
using NodaTime;

namespace SolarEconomics;

/// <summary>Reads NAESB ESPI feeds: usage points, meter readings and their interval blocks, streamed entry by entry.</summary>
/// <remarks>Document type definitions are refused, so no entity can grow. Source: readings-espi.</remarks>
internal sealed class EspiReader : IRecordReader
{
    private const int ProgressEvery = 2048;

    public string Format => "ESPI";

    public bool Recognises(RecordFile file)
    {
        var head = file.Head[..Math.Min(file.Head.Length, 16 * 1024)];
        var text = CsvText.EncodingOf(head).GetString(head).TrimStart('\uFEFF', ' ', '\r', '\n', '\t');
        return text.StartsWith('<')
            && (text.Contains("naesb.org/espi", StringComparison.Ordinal) || text.Contains("IntervalBlock", StringComparison.Ordinal) || text.Contains("<UsagePoint", StringComparison.Ordinal));
    }

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        var problems = new ProblemList(file.Name);
        var feed = new EspiFeed(problems);
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
        };
        using (var stream = file.Open())
        using (var reader = XmlReader.Create(stream, settings))
        {
            try
            {
                ReadNodes(reader, feed, () =>
                {
                    options.Cancel.ThrowIfCancellationRequested();
                    options.Progress?.Report(stream.Position / (double)file.Length);
                });
            }
            catch (XmlException e)
            {
                problems.Lost(e.LineNumber, e.LinePosition, "", $"XML that cannot be read further ({e.Message.TrimEnd('.')})", "a whole ESPI file; what stands before is counted, what comes after is not");
            }
            feed.EndEntry();
        }
        options.Progress?.Report(1);
        var channels = feed.Channels(file.Name);
        if (channels.Count == 0)
            throw Throw.NothingToRead(file.Name, "an ESPI file without any readable interval", "IntervalBlock elements with readings. See the problems listed", problems.ToList());
        feed.SayClock(options.Zone is not null);
        return new RecordContent(file.Path, Format, options.Zone ?? feed.Zone ?? DateTimeZone.Utc) { Channels = channels, Problems = problems.ToList() };
    }

    private static void ReadNodes(XmlReader reader, EspiFeed feed, Action tick)
    {
        var count = 0;
        var lines = (IXmlLineInfo)reader;
        while (reader.Read())
        {
            if (++count % ProgressEvery == 0) tick();
            switch (reader.NodeType)
            {
                case XmlNodeType.Element:
                    feed.Open(reader.LocalName, lines.LineNumber);
                    if (string.Equals(reader.LocalName, "link", StringComparison.Ordinal)) feed.Link(reader.GetAttribute("rel") ?? "", reader.GetAttribute("href") ?? "");
                    if (reader.IsEmptyElement) feed.Close(reader.LocalName);
                    break;
                case XmlNodeType.Text or XmlNodeType.CDATA:
                    feed.Text(reader.Value.Trim(), lines.LineNumber);
                    break;
                case XmlNodeType.EndElement:
                    feed.Close(reader.LocalName);
                    break;
            }
        }
    }
}
