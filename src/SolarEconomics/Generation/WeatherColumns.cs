using System.Globalization;

namespace SolarEconomics;

/// <summary>Which column of a weather table is what, and how its numbers are written.</summary>
internal sealed record WeatherColumns(char Separator, int Count, int Time, bool TimeIsEnd, int Global, int Beam, int Diffuse, int Air, int Wind, double WindFactor)
{
    internal bool IsSplit => Beam >= 0;

    internal static WeatherColumns Of(string heading, int line, string file)
    {
        var separator = heading.Contains('\t', StringComparison.Ordinal) ? '\t' : heading.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        string[] names = [.. heading.TrimStart('\uFEFF').Split(separator).Select(n => n.Trim().Trim('"').Replace("m2", "m²", StringComparison.Ordinal).Replace("(C)", "(°C)", StringComparison.Ordinal))];
        int At(params string[] wanted) => Array.FindIndex(names, n => wanted.Any(w => string.Equals(n, w, StringComparison.OrdinalIgnoreCase)));
        var (start, end) = (At("time", "start", "time start"), At("time end", "end"));
        var (global, beam, diffuse) = (At("global (W/m²)"), At("beam (W/m²)"), At("diffuse (W/m²)"));
        var (air, metres, kilometres) = (At("air (°C)"), At("wind (m/s)"), At("wind (km/h)"));
        if (start < 0 && end < 0) throw Throw.NoWeatherColumn(file, line, "time", names);
        if (global < 0) throw Throw.NoWeatherColumn(file, line, "global (W/m²)", names);
        if (air < 0) throw Throw.NoWeatherColumn(file, line, "air (°C)", names);
        if (beam < 0 != diffuse < 0) throw Throw.NoWeatherColumn(file, line, beam < 0 ? "beam (W/m²)" : "diffuse (W/m²)", names);
        return new WeatherColumns(separator, names.Length, start >= 0 ? start : end, start < 0, global, beam, diffuse, air, metres >= 0 ? metres : kilometres, metres >= 0 ? 1 : 1 / 3.6);
    }

    /// <summary>A number; <see langword="null"/> where the field is empty or none.</summary>
    internal double? Number(string field)
    {
        var text = field.Trim().Trim('"');
        if (Separator != ',') text = text.Replace(',', '.');
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
    }
}
