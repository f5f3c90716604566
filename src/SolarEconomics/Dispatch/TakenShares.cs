namespace SolarEconomics;

/// <summary>Which share of what the arrays bring to each bus a run took, interval by interval; the rest was curtailed.</summary>
internal sealed class TakenShares
{
    private readonly double[] _ofAc;
    private readonly double[] _ofDc;

    private TakenShares(int count) => (_ofAc, _ofDc) = (new double[count], new double[count]);

    /// <summary>One value per interval. Range: 0 to 1.</summary>
    internal double[] Of(Coupling coupling) => coupling is Coupling.Ac ? _ofAc : _ofDc;

    /// <summary>The run tells what reached the board; by its rule curtailment there falls on both kinds of arrays in proportion to what each brings.</summary>
    internal static TakenShares Of(EnergyFlows flows)
    {
        var supply = BusSupply.Of(flows.Conditions);
        var (hours, converter, shares) = (flows.Time.HoursArray, flows.System.Converter, new TakenShares(flows.Time.Count));
        for (var i = 0; i < hours.Length; i++)
        {
            var dcToBattery = Math.Min(flows.ChargedKwh(i), supply.DcKwh[i]);
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
