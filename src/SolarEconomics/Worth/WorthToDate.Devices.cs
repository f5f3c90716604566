namespace SolarEconomics;

public sealed partial class WorthToDate
{
    /// <summary>The value to date by device, in the order of the plant; empty where there is no upper end.</summary>
    /// <remarks>Equation per interval: the interval's worth (avoided purchases and export, battery included) shared in proportion to what each device made in it; a
    /// month's cents by largest remainder. No device made a kWh for one purpose: it is an attribution, not a difference of bills.</remarks>
    public IReadOnlyList<DeviceWorth> ByDevice
    {
        get
        {
            if (Value is not { } value) return [];
            var names = Flows.ByDevice.Keys.ToList();
            var worth = new double[names.Count];
            for (var i = 0; i < Flows.Grid.Count; i++)
            {
                var own = Flows.GenerationKwh[i] - Flows.ExportKwh[i] - Flows.ChargeKwh[i] + Flows.DischargeKwh[i] - Flows.StandbyKwh[i];
                var amount = (Prices.Import[i] * own) + (Prices.Export[i] * Flows.ExportKwh[i]);
                var made = names.Sum(n => Flows.ByDevice[n][i]);
                if (made <= 0) continue;
                for (var d = 0; d < names.Count; d++) worth[d] += amount * Flows.ByDevice[names[d]][i] / made;
            }
            // What fell into hours without generation (stored energy, standby) follows the rest, so that the parts sum to the value.
            var shared = worth.Sum();
            var exact = worth.Select(w => shared != 0 ? value.Amount * (decimal)(w / shared) : 0).ToArray();
            var rounded = LargestRemainder.Round(exact, Site.Currency.MinorDigits);
            return [.. names.Select((name, d) => new DeviceWorth(name, Flows.ByDevice[name].Sum(), Money.Nominal(rounded[d], Site.Currency), PaidFor(name)))];
        }
    }

    /// <summary>What was spent, what has come back, and what is still to recover.</summary>
    /// <exception cref="RecordException">There is no ledger, or nothing bounds the generation.</exception>
    public Recovery Recovery
    {
        get
        {
            if (Ledger is null) throw Throw.NoLedger(Site.Name);
            if (Value is not { } value) throw Throw.NoValue(Site.Name);
            var ledger = Ledger.Before(Period.End);
            Money Sum(LedgerClass kind) => Money.Nominal(ledger.Of(kind).Sum(e => e.CashFlow.Amount), Site.Currency);
            return new Recovery(-Sum(LedgerClass.Investment), -Sum(LedgerClass.Running), Sum(LedgerClass.Income), value, Options.ResaleToday);
        }
    }

    private Money? PaidFor(string device) => Ledger is null ? null : Money.Nominal(
        -Ledger.Before(Period.End).Entries.Where(e => e.Class is not (LedgerClass.Finance or LedgerClass.NoMoney) && string.Equals(e.Device, device, StringComparison.OrdinalIgnoreCase))
            .Sum(e => e.CashFlow.Amount), Site.Currency);
}
