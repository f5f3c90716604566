using NodaTime;
using Parquet;
using Parquet.Schema;

namespace SolarEconomics.Files;

/// <summary>Writes a table of channels as Parquet, group of rows by group of rows.</summary>
internal static class ParquetTable
{
    private const int RowsInGroup = 262_144;

    internal static void Write(ChannelTable table, string path, CancellationToken cancel) => WriteAsync(table, path, cancel).GetAwaiter().GetResult();

    private static async Task WriteAsync(ChannelTable table, string path, CancellationToken cancel)
    {
        var start = Times("start");
        var end = Times("end");
        var kwh = table.Headers.Select(h => new DataField<double?>(h)).ToArray();
        var quality = table.Headers.Select((h, c) => table.HasQuality[c] ? new DataField<string>(ChannelTable.QualityHeader(h)) : null).ToArray();
        var schema = new ParquetSchema([start, end, .. kwh.Zip(quality).SelectMany(p => p.Second is null ? new Field[] { p.First } : [p.First, p.Second])]);
        await using var stream = new FileStream(path, FileMode.Create, FileAccess.Write);
        await using var writer = await ParquetWriter.CreateAsync(schema, stream, cancellationToken: cancel);
        var block = new ParquetBlock(table);
        while (block.Fill(RowsInGroup, cancel))
        {
            using var group = writer.CreateRowGroup();
            await group.WriteAsync<DateTime>(start, block.Starts, cancellationToken: cancel);
            await group.WriteAsync<DateTime>(end, block.Ends, cancellationToken: cancel);
            for (var c = 0; c < kwh.Length; c++)
            {
                await group.WriteAsync<double>(kwh[c], block.Kwh(c), cancellationToken: cancel);
                if (quality[c] is { } field) await group.WriteAsync(field, block.Words(c));
            }
        }
    }

    private static DateTimeDataField Times(string name) => new(name, DateTimeFormat.Timestamp, isAdjustedToUTC: true, DateTimeTimeUnit.Micros);
}
