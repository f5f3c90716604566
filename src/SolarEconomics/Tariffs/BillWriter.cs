using NodaTime;

namespace SolarEconomics;

/// <summary>Turns energy by rate and days into lines, and lines into a total.</summary>
internal static class BillWriter
{
    internal static void AddLines(PlanSegment segment, ReadOnlySpan<double> importKwh, ReadOnlySpan<double> exportKwh, List<BillLine> lines)
    {
        var energy = 0;
        foreach (var part in segment.Tariff.Parts)
        {
            switch (part)
            {
                case SupplyCharge supply:
                    AddSupply(segment, supply, lines);
                    break;
                case EnergyPart { Side: EnergySide.Import }:
                    AddEnergy(segment, segment.Energy[energy++], importKwh, lines);
                    break;
                case EnergyPart:
                    AddEnergy(segment, segment.Energy[energy++], exportKwh, lines);
                    break;
            }
        }
    }

    internal static Bill Total(DateSpan period, Tariff tariff, List<BillLine> lines)
    {
        var before = 0m;
        var tax = 0m;
        foreach (var line in lines)
        {
            before += line.Amount.Amount;
            tax += line.Tax.Amount;
        }
        tax = tariff.Rounding.Line(tax, tariff.Currency);
        var total = tariff.Rounding.Total(before + tax, tariff.Currency);
        return new Bill(period, tariff.Name, lines, Of(before, tariff), Of(tax, tariff), Of(total, tariff), [RuleWords.Rounding(tariff)]);
    }

    private static void AddSupply(PlanSegment segment, SupplyCharge supply, List<BillLine> lines)
    {
        var quantity = supply.Per switch
        {
            ChargePeriod.Day => segment.Days.Days,
            ChargePeriod.Month => ShareOf(segment.Days, d => new LocalDate(d.Year, d.Month, 1), start => start.PlusMonths(1)),
            _ => ShareOf(segment.Days, d => new LocalDate(d.Year, 1, 1), start => start.PlusYears(1)),
        };
        lines.Add(Line(segment, supply, supply.Name, quantity, RuleWords.Unit(supply.Per), supply.Amount, 1,
            RuleWords.Supply(supply, quantity, segment.Tariff)));
    }

    private static void AddEnergy(PlanSegment segment, SegmentEnergy energy, ReadOnlySpan<double> kwh, List<BillLine> lines)
    {
        Span<double> sums = stackalloc double[energy.Part.Rates.Count];
        sums.Clear();
        energy.Sum(kwh, sums);
        for (var i = 0; i < sums.Length; i++)
        {
            if (sums[i] == 0) continue;
            var rate = energy.Part.Rates[i];
            // A double holds 15 digits for certain; the conversion keeps those and drops the noise of adding.
            var quantity = (decimal)sums[i];
            lines.Add(Line(segment, energy.Part, rate.Name, quantity, "kWh", rate.PerKwh, energy.Part.Side == EnergySide.Import ? 1 : -1,
                RuleWords.Energy(energy.Part, rate, quantity, segment.Tariff)));
        }
    }

    private static BillLine Line(PlanSegment segment, TariffPart part, string name, decimal quantity, string unit, decimal rate, int sign, string why)
    {
        var tariff = segment.Tariff;
        var amount = sign * tariff.Rounding.Line(quantity * rate, tariff.Currency);
        return new BillLine(name, segment.Days, quantity, unit, rate, Of(amount, tariff), Of(amount * tariff.TaxOn(part), tariff), why);
    }

    /// <summary>How many months or years a span of days is, each part counted by its days.</summary>
    private static decimal ShareOf(DateSpan days, Func<LocalDate, LocalDate> startOf, Func<LocalDate, LocalDate> next)
    {
        var share = 0m;
        for (var start = startOf(days.Start); start < days.End; start = next(start))
        {
            var whole = new DateSpan(start, next(start));
            share += (decimal)whole.Overlap(days).Days / whole.Days;
        }
        return share;
    }

    private static Money Of(decimal amount, Tariff tariff) => Money.Nominal(amount, tariff.Currency);
}
