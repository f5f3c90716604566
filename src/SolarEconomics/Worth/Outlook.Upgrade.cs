using System.Globalization;

namespace SolarEconomics;

public sealed partial class Outlook
{
    /// <summary>The difference of two outlooks: these modules replaced by those, the old ones sold, reused or kept.</summary>
    /// <param name="swap">The change.</param>
    /// <exception cref="UnknownNameException">No such device in the plant; the message names the nearest.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The change lies before the end of the records or beyond the horizon, or a size is not above 0.</exception>
    /// <remarks>Equation per interval: extra use = min(extra generation, import recorded), the rest is exported; the battery is left as recorded, so the
    /// share used is a lower estimate. Extra generation scales the device's own record by kWp and age, cut at the inverter's limit where one is stated.</remarks>
    public UpgradeResult Upgrade(PanelSwap swap)
    {
        ArgumentNullException.ThrowIfNull(swap);
        var futures = new SwapFutures(Record, Assumptions, swap);
        var year = futures.PerYear;
        var likely = futures.Events(e => (e.Avoided, e.FeedIn, e.ExportedKwh));
        var path = new CashPath(swap.On, Horizon, likely, 0);
        double NpvOf(List<CashEvent> events) => new CashPath(swap.On, Horizon, events, Assumptions.DiscountRate).AtEnd;
        var npvs = new[] { NpvOf(futures.Events(e => (0, e.IfAllExported, e.UsedKwh + e.ExportedKwh))), NpvOf(futures.Events(e => (e.IfAllUsed, 0, 0))) };
        var values = new[] { year.IfAllExported, year.IfAllUsed };
        var dated = DatedMoneyFlow.Sorted(Currency, PriceBasis.Nominal, likely.Select(e => new DatedAmount(MiddleOf(e), (decimal)e.Amount)));
        _ = TimeValue.TryXirr(dated, out var irr);
        var extra = year.UsedKwh + year.ExportedKwh;
        var result = new UpgradeResult(
            swap, futures.OldKwp, extra, extra != 0 ? year.UsedKwh / extra : 0,
            Round(year.Avoided + year.FeedIn), new MoneyRange(Round(values.Min()), Round(values.Max())),
            Round(NpvOf(likely)), new MoneyRange(Round(npvs.Min()), Round(npvs.Max())),
            Years(path.LastingCrossing()), irr, new Finding("", ""));
        return result with { Finding = UpgradeWords.Say(result, this, CultureInfo.InvariantCulture) };
    }
}
