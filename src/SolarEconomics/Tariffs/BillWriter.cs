namespace SolarEconomics;

/// <summary>Writes a line, and adds lines up to a bill.</summary>
internal static class BillWriter
{
    internal static BillLine Line(SegmentContext context, TariffPart part, string name, decimal quantity, string unit, decimal rate, int sign, string why)
    {
        return Amount(context, part, name, quantity, unit, rate, sign * quantity * rate, why);
    }

    /// <summary>A line whose amount is not quantity times rate, as the rate is a mean.</summary>
    internal static BillLine Amount(SegmentContext context, TariffPart part, string name, decimal quantity, string unit, decimal rate, decimal exact, string why)
    {
        var tariff = context.Tariff;
        var amount = Math.Sign(exact) * tariff.Rounding.Line(Math.Abs(exact), tariff.Currency);
        return new BillLine(name, context.Days, quantity, unit, rate, Of(amount, tariff), Of(amount * tariff.TaxOn(part), tariff), why) { Source = part.Name };
    }

    /// <summary>A sum of kWh as it stands on a bill: adding doubles leaves noise far below what any meter shows.</summary>
    internal static decimal Kwh(double sum) => Math.Round((decimal)sum, 9);

    internal static Bill Total(DateSpan period, Tariff tariff, IReadOnlyList<BillLine> lines, IReadOnlyList<string> notes)
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
        return new Bill(period, tariff.Name, lines, Of(before, tariff), Of(tax, tariff), Of(total, tariff)) { Notes = [RuleWords.Rounding(tariff), .. notes] };
    }

    private static Money Of(decimal amount, Tariff tariff) => Money.Nominal(amount, tariff.Currency);
}
