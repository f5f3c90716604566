using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace SolarEconomics.Notebook;

/// <summary>Names of steps as the file format asks for them: 1 to 64 letters, digits, hyphens and underscores.</summary>
internal static class StepIds
{
    internal static bool IsWellFormed(string id) =>
        id.Length is >= 1 and <= 64 && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');

    internal static string New(Func<string, bool> isTaken)
    {
        while (true)
        {
            var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(4));
            if (!isTaken(id)) return id;
        }
    }

    /// <summary>A name made from place and text: a file without names gets the same ones each time it is opened.</summary>
    internal static string FromPlace(int index, string source, Func<string, bool> isTaken)
    {
        for (var attempt = 0; ; attempt++)
        {
            var bytes = SHA256.HashData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{index}:{attempt}:{source}")));
            var id = Convert.ToHexStringLower(bytes.AsSpan(0, 4));
            if (!isTaken(id)) return id;
        }
    }
}
