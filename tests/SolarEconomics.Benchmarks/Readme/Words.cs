using System.Globalization;

namespace SolarEconomics.Benchmarks;

/// <summary>Numbers as the tables print them.</summary>
internal static class Words
{
    internal static string Count(long number) => number switch
    {
        >= 1_000_000_000 => (number / 1e9).ToString("0.##", CultureInfo.InvariantCulture) + " billion",
        >= 1_000_000 => (number / 1e6).ToString("0.##", CultureInfo.InvariantCulture) + " million",
        _ => number.ToString("#,0", CultureInfo.InvariantCulture),
    };

    internal static string Time(double seconds) => seconds switch
    {
        >= 1 => seconds.ToString("0.0 's'", CultureInfo.InvariantCulture),
        >= 1e-3 => (seconds * 1e3).ToString(seconds >= 0.1 ? "0 'ms'" : "0.0 'ms'", CultureInfo.InvariantCulture),
        >= 1e-6 => (seconds * 1e6).ToString("0.0 'µs'", CultureInfo.InvariantCulture),
        _ => (seconds * 1e9).ToString("0 'ns'", CultureInfo.InvariantCulture),
    };
}
