namespace SolarEconomics.Tests;

/// <summary>The slow twin of a sweep: plain branches, one case, one hour after another, written from the words of <see cref="BatteryCase"/>.</summary>
internal static class NaiveBattery
{
    internal static (double Npv, double[] Cost, double UsableKwh) Years(Conditions conditions, BatteryCase c, int years)
    {
        var battery = c.Battery;
        var (stored, drawn, npv) = (battery.StoredAtStartKwh, 0.0, -c.Price);
        var costs = new double[years];
        double Usable(int age) => battery.UsableKwh * Math.Max(0, 1 - (c.Ageing.CalendarFade * age) - (battery.UsableKwh > 0 ? c.Ageing.CycleFade * drawn / battery.UsableKwh : 0));
        for (var year = 0; year < years; year++)
        {
            var usable = Usable(year);
            if (stored > usable) stored = usable;
            for (var i = 0; i < conditions.Time.Count; i++)
            {
                var hours = conditions.Time.Hours[i];
                var sun = conditions.Arrays[0].PotentialKwh.Span[i] * c.SunScale * Math.Pow(1 - c.SunLossPerYear, year);
                var use = (conditions.Load.Kwh[i] * c.UseScale * Math.Pow(1 + c.UseGrowth, year)) + (battery.StandbyW / 1000 * hours);
                double import = 0, export = 0;
                if (sun > use)
                {
                    var charge = Math.Min(Math.Min(sun - use, battery.MostChargeKw * hours), (usable - stored) / battery.ChargeEfficiency);
                    stored += charge * battery.ChargeEfficiency;
                    export = sun - use - charge;
                }
                else
                {
                    var given = Math.Min(Math.Min(use - sun, battery.MostDischargeKw * hours), stored * battery.DischargeEfficiency);
                    stored -= given / battery.DischargeEfficiency;
                    drawn += given / battery.DischargeEfficiency;
                    import = use - sun - given;
                }
                costs[year] += ((import * conditions.ImportPricePerKwh.Span[i]) - (export * conditions.ExportPricePerKwh.Span[i])) * Math.Pow(1 + c.PriceGrowth, year);
            }
            npv -= costs[year] / Math.Pow(1 + c.DiscountRate, year + 1);
        }
        return (npv, costs, Usable(years));
    }
}
