namespace SolarEconomics;

/// <summary>What a generator did in a stretch of intervals.</summary>
internal readonly record struct GeneratorRun(double Hours, int Starts, double Litres, double Cost)
{
    internal static GeneratorRun Of(EnergyFlows flows, int from, int to)
    {
        if (flows.System.Generator is not { } generator) return default;
        var (hours, starts, litres) = (0.0, 0, 0.0);
        for (var i = from; i < to; i++)
        {
            var kwh = flows.GeneratorKwh(i);
            if (kwh <= 0) continue;
            if (i == 0 || flows.GeneratorKwh(i - 1) <= 0) starts++;
            hours += flows.Time.Hours[i];
            litres += generator.LitresFor(kwh, flows.Time.Hours[i]);
        }
        return new GeneratorRun(hours, starts, litres, (litres * generator.FuelPricePerLitre) + (hours * generator.MaintenancePerHour));
    }
}
