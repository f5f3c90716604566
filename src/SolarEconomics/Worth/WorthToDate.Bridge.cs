using System.Globalization;

namespace SolarEconomics;

public sealed partial class WorthToDate
{
    /// <summary>The corrections of the value to date in their printed order.</summary>
    private static readonly CorrectionKind[] Order =
    [
        CorrectionKind.MeasurementPoint, CorrectionKind.Destination, CorrectionKind.Standby,
        CorrectionKind.PriceInForce, CorrectionKind.Tax, CorrectionKind.RunningCosts,
    ];

    /// <summary>The bridge of the value to date: from counters times one price to what the plant has really been worth, running costs paid.</summary>
    /// <param name="culture">How numbers are written; <see langword="null"/> for the invariant way.</param>
    /// <exception cref="RecordException">Nothing counted generation, so there is no straight line to start from.</exception>
    /// <remarks>Each correction is the difference of two full recomputations of all bills. Beside the printed order stand the Shapley average
    /// and the smallest and largest part over all orders. Source: bridge-1.</remarks>
    public Bridge Bridge(CultureInfo? culture = null)
    {
        culture ??= CultureInfo.InvariantCulture;
        var counted = CountedKwh;
        if (Value is null || counted <= 0) throw Throw.NoStraightLine(Site.Name);
        var price = OnePrice;
        var runs = new BridgeRuns(Order.Length, new BridgeStates(this, counted, price).Value);
        var words = new ToDateBridgeWords(this, counted, price, culture);
        return BridgeWriter.Write(
            "Value to date: from counters times one price to what it has been worth",
            "Counters × one price",
            "Worth so far",
            runs,
            Order,
            Site.Currency,
            words,
            words.Standing);
    }

    internal double CountedKwh => Records.Generation.Sum(g => g.DisplayedKwh);

    internal decimal OnePrice => Options.OnePricePerKwh ?? Tariffs.Latest.StandardImportPerKwhWithTax;

    /// <summary>The result with any subset of the corrections on.</summary>
    private sealed class BridgeStates
    {
        private readonly WorthToDate _worth;
        private readonly double _countedShare;
        private readonly BillingPlan _inForce;
        private readonly BillingPlan _onePrice;

        internal BridgeStates(WorthToDate worth, double countedKwh, decimal onePrice)
        {
            _worth = worth;
            var generated = worth.Flows.GenerationKwh.Sum();
            _countedShare = generated > 0 ? countedKwh / generated : 0;
            _inForce = worth.Tariffs.On(worth.Flows.Grid, worth.Site.Zone);
            _onePrice = worth.Tariffs.WithOnePrice(onePrice).On(worth.Flows.Grid, worth.Site.Zone);
        }

        internal decimal Value(uint subset)
        {
            bool On(CorrectionKind kind) => (subset & (1u << Array.IndexOf(Order, kind))) != 0;
            var flows = _worth.Flows;
            var scale = On(CorrectionKind.MeasurementPoint) ? 1 : _countedShare;
            var destination = On(CorrectionKind.Destination);
            var standby = On(CorrectionKind.Standby);
            var without = new double[flows.Grid.Count];
            var export = new double[flows.Grid.Count];
            for (var i = 0; i < without.Length; i++)
            {
                export[i] = destination ? scale * flows.ExportKwh[i] : 0;
                var avoided = destination
                    ? flows.GenerationKwh[i] - flows.ExportKwh[i] - flows.ChargeKwh[i] + flows.DischargeKwh[i]
                    : flows.GenerationKwh[i];
                without[i] = flows.ImportKwh[i] + (scale * avoided) - (standby ? flows.StandbyKwh[i] : 0);
            }
            var plan = On(CorrectionKind.PriceInForce) ? _inForce : _onePrice;
            var share = On(CorrectionKind.Tax) ? _worth.Site.TaxReclaimedShare : 0;
            var value = new BillDifference(plan, share).PerPeriod(without, flows.ImportKwh, export).Sum();
            return On(CorrectionKind.RunningCosts) ? value - _worth.RunningCosts.Amount : value;
        }
    }
}
