using NodaTime;

namespace SolarEconomics;

/// <summary>Seasonal shade laid on a model.</summary>
public sealed partial class ShadeEnvelope
{
    /// <summary>The share of a clear sky's power that is left in each step: of hours called shaded the share found, of all others 1.</summary>
    internal void Fill(Span<double> unshaded, IntervalGrid grid, int first, DateTimeZone zone)
    {
        for (var i = 0; i < unshaded.Length; i++)
        {
            var local = (grid.StartOf(first + i) + (grid.Step / 2)).InZone(zone);
            unshaded[i] = _share[local.Month - 1, local.Hour] is { } share and < ShadedBelow ? share : 1;
        }
    }
}
