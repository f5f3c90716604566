using System.Text;

namespace SolarEconomics.Tests;

/// <summary>Breaks a file in one of many ways, the same way for the same seed.</summary>
internal static class Mutation
{
    private static readonly string[] Nasty =
    [
        "\"", ",", ";", "\r", "\n", "\r\n", "\0", "é", "NaN", "Infinity", "1e308", "-1e308", "999999999999999999999", "0x1F", "--5", "1,5", "1.2.3", "2024-02-30 00:00",
        "2024-13-01 99:99", "1970-01-01 00:00", "9999-12-31 23:59", "300,", "200,", "400,1,48,N,,\n", "900\n", "A", "V", "<", "</entry>", "<value>", "<!DOCTYPE x [<!ENTITY a \"aaaa\">]>",
        "&a;", "&#0;", "\uFEFF", "\u2028", "total", "#", " ", "\t",
    ];

    internal static byte[] Of(byte[] original, int seed)
    {
        var random = new Random(seed);
        var bytes = original;
        for (var times = random.Next(1, 4); times > 0; times--) bytes = Once(bytes, random);
        return bytes;
    }

    private static byte[] Once(byte[] bytes, Random random)
    {
        if (bytes.Length < 4) return [.. bytes, .. "x\n"u8];
        var at = random.Next(bytes.Length);
        switch (random.Next(12))
        {
            case 0: return Replaced(bytes, at, [(byte)random.Next(256)]);
            case 1: return Replaced(bytes, at, [(byte)(bytes[at] ^ (1 << random.Next(8)))]);
            case 2: return bytes[..at];
            case 3: return [.. bytes[..at], .. Encoding.UTF8.GetBytes(Nasty[random.Next(Nasty.Length)]), .. bytes[at..]];
            case 4: return Replaced(bytes, at, Encoding.UTF8.GetBytes(Nasty[random.Next(Nasty.Length)]));
            case 5: return WithLine(bytes, at, (before, line, after) => [.. before, .. line, .. line, .. after]);
            case 6: return WithLine(bytes, at, (before, line, after) => [.. before, .. after]);
            case 7: return WithLine(bytes, at, (before, line, after) => [.. before, .. after, .. line]);
            case 8: return WithLine(bytes, at, (before, line, after) => [.. before, .. line.AsSpan(0, random.Next(line.Length)), .. after]);
            case 9: return [.. bytes[..at], .. bytes[random.Next(bytes.Length)..]];
            case 10 when random.Next(6) == 0: return Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(Encoding.UTF8.GetString(bytes))).ToArray();
            case 10: return [.. "\uFEFF"u8, .. bytes];
            default: return Replaced(bytes, at, Encoding.ASCII.GetBytes(new string('9', random.Next(1, 30))));
        }
    }

    private static byte[] Replaced(byte[] bytes, int at, byte[] with) =>
        [.. bytes[..at], .. with, .. bytes.AsSpan(Math.Min(bytes.Length, at + with.Length))];

    private static byte[] WithLine(byte[] bytes, int at, Func<byte[], byte[], byte[], byte[]> change)
    {
        var start = Array.LastIndexOf(bytes, (byte)'\n', at) + 1;
        var end = Array.IndexOf(bytes, (byte)'\n', at);
        if (end < 0) end = bytes.Length - 1;
        return start > end ? bytes : change(bytes[..start], bytes[start..(end + 1)], bytes[(end + 1)..]);
    }
}
