namespace SolarEconomics;

/// <summary>Writes a line, and adds lines up to a bill.</summary>
internal static class BillWriter
{
    internal static BillLine Line(SegmentContext context, TariffPart part, string name, decimal quantity, string unit, decimal rate, int sign, string why)
    {
        var tariff = context.Tariff;
        var amount = sign * tariff.Rounding.Line(quantity * rate, tariff.Currency);
        return new BillLine(name, context.Days, quantity, unit, rate, Of(amount, tariff), Of(amount * tariff.TaxOn(part), tariff), why) { Source = part.Name };
    }

    /// <summary>A sum of kWh as it stands on a bill: adding doubles leaves noise far below what any meter shows.</summary>
    internal static decimal Kwh(double sum) => Math.Round((decimal)sum, 9);

    internal static Bill Total(DateSpan period, Tariff tariff, IReadOnlyList<BillLine> lines)
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
        return new Bill(period, tariff.Name, lines, Of(before, tariff), Of(tax, tariff), Of(total, tariff)) { Notes = [RuleWords.Rounding(tariff)] };
    }

    private static Money Of(decimal amount, Tariff tariff) => Money.Nominal(amount, tariff.Currency);
}
