using System.Globalization;

namespace SolarEconomics;

/// <summary>Messages of the sun.</summary>
internal static partial class Throw
{
    internal static ArgumentException RepeatedHorizonAzimuth(double azimuthDeg, double firstDeg, double secondDeg) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found two points of the horizon at azimuth {azimuthDeg}° (elevations {firstDeg}° and {secondDeg}°), expected one height per direction. Keep the higher one."));
}
