using NodaTime;

namespace SolarEconomics.Charts.Tests;

/// <summary>Cash curves made up for the tests: each shows one shape that a chart has to cope with.</summary>
internal static class CashSamples
{
    internal static readonly Currency Euro = Currency.Of("EUR");
    private static readonly LocalDate FirstPurchase = new(2022, 3, 1);

    /// <summary>Paid back for good, after a replacement has pulled it down on the way.</summary>
    internal static CashCurve PaidBack() => Curve(
        years: 25, recordedYears: 3, cost: 14_200, yearly: 1_050, growth: 0.03, replacement: (11, 2_400), straightYearly: 2_366,
        new Payback(13.1, 13.1, 19.4, new LocalDate(2035, 4, 22), 25, new Finding("13.1 years", "after the first purchase, on 22 Apr 2035.")),
        straightYears: 6.0, new Finding("13.1 years", "after the first purchase, and for good from then on. The straight line says 6.0 years: it prices every kWh as if it had been bought."));

    /// <summary>Never reaches zero within the horizon.</summary>
    internal static CashCurve NeverPaidBack() => Curve(
        years: 25, recordedYears: 3, cost: 14_200, yearly: 480, growth: 0.0, replacement: (12, 3_000), straightYearly: 900,
        new Payback(null, null, null, null, 25, new Finding("not within 25 years", "Short by €5,200 then.")),
        straightYears: 15.8, new Finding("Not paid back within 25 years", "of the first purchase: €5,200 is still open then. The straight line says 15.8 years."));

    /// <summary>A currency written by its code, which takes more room than a sign.</summary>
    internal static CashCurve InFrancs()
    {
        var curve = PaidBack();
        CashPoint Francs(CashPoint p) => p with { Position = Money.Nominal(p.Position.Amount, Currency.Of("CHF")) };
        return curve with { Points = [.. curve.Points.Select(Francs)], StraightLine = [.. curve.StraightLine.Select(Francs)] };
    }

    internal static CashCurve Curve(int years, int recordedYears, double cost, double yearly, double growth, (int Year, double Cost) replacement,
        double straightYearly, Payback payback, double? straightYears, Finding finding)
    {
        List<CashPoint> points = [], straight = [];
        var position = 0.0;
        for (var month = 0; month <= years * 12; month++)
        {
            var date = FirstPurchase.PlusMonths(month);
            var isRecorded = month <= recordedYears * 12;
            if (isRecorded || month % 12 == 0)
            {
                points.Add(new CashPoint(date, month / 12.0, Euros(position), isRecorded));
                straight.Add(new CashPoint(date, month / 12.0, Euros(month == 0 ? 0 : -cost + straightYearly * month / 12.0), isRecorded));
            }

            // Summer brings more than winter; the purchase falls on the first day.
            var season = 1 + 0.8 * Math.Sin((date.Month - 3.5) / 12 * 2 * Math.PI);
            position += yearly * Math.Pow(1 + growth, month / 12) / 12 * (isRecorded ? season : 1);
            position -= month == 0 ? cost : 0;
            position -= month == replacement.Year * 12 ? replacement.Cost : 0;
        }

        return new CashCurve(points, straight, payback, straightYears, finding);
    }

    internal static Money Euros(double amount) => Money.Nominal(Math.Round((decimal)amount, 2), Euro);
}
