namespace SolarEconomics;

/// <summary>Which share of what the arrays bring to each bus a run took, interval by interval; the rest was curtailed.</summary>
internal sealed class TakenShares
{
    private readonly double[] _hours;
    private readonly double[] _ofAc;
    private readonly double[] _ofDc;

    private TakenShares(double[] hours) => (_hours, _ofAc, _ofDc) = (hours, new double[hours.Length], new double[hours.Length]);

    /// <summary>What one array fed in, behind its inverter or controller. Unit: kWh.</summary>
    internal double BehindDeviceKwh(ArraySupply array)
    {
        var shares = array.Coupling is Coupling.Ac ? _ofAc : _ofDc;
        var potential = array.PotentialKwh.Span;
        var sum = 0.0;
        for (var i = 0; i < potential.Length; i++) sum += array.BehindKwh(potential[i], _hours[i]) * shares[i];
        return sum;
    }

    /// <summary>The run tells what reached the board; by its rule curtailment there falls on both kinds of arrays in proportion to what each brings.</summary>
    internal static TakenShares Of(EnergyFlows flows)
    {
        var supply = BusSupply.Of(flows.Conditions);
        var (hours, converter, shares) = (flows.Time.HoursArray, flows.System.Converter, new TakenShares(flows.Time.HoursArray));
        for (var i = 0; i < hours.Length; i++)
        {
            var restedKwh = flows.StoredKwh[i] - flows[FlowPath.SelfDischargeLost][i];
            var chargedKwh = Math.Max(0, flows.StoredKwh[i + 1] - restedKwh) + flows[FlowPath.ChargeLost][i];
            var dcToBattery = Math.Min(chargedKwh, supply.DcKwh[i]);
            var mostToAc = double.IsPositiveInfinity(converter.MostToAcKw) ? double.PositiveInfinity : converter.MostToAcKw * hours[i];
            var dcToAc = Math.Min((supply.DcKwh[i] - dcToBattery) * converter.ToAc, mostToAc);
            var broughtKwh = supply.AcKwh[i] + dcToAc;
            var tookKwh = flows[FlowPath.ArrayToUse][i] + flows[FlowPath.ArrayToStandby][i] + flows[FlowPath.ArrayToExport][i] + flows[FlowPath.ArrayToBattery][i] - dcToBattery;
            var share = broughtKwh > 0 ? tookKwh / broughtKwh : 0;
            shares._ofAc[i] = share;
            shares._ofDc[i] = supply.DcKwh[i] > 0 ? (dcToBattery + (dcToAc * share / converter.ToAc)) / supply.DcKwh[i] : 0;
        }
        return shares;
    }
}
