namespace SolarEconomics;

/// <summary>What one billing period hands on to the next within a run: earlier demands and banked energy, by name of the part.</summary>
internal sealed class BillCarry
{
    private readonly Dictionary<string, List<double>> _demandKw = new(StringComparer.Ordinal);
    private readonly Dictionary<string, decimal[]> _bankedKwh = new(StringComparer.Ordinal);

    /// <summary>Demands of the earlier periods, earliest first.</summary>
    internal List<double> DemandsKw(string part)
    {
        if (!_demandKw.TryGetValue(part, out var kw)) _demandKw.Add(part, kw = []);
        return kw;
    }

    /// <summary>Energy banked so far, by rate.</summary>
    internal decimal[] BankedKwh(string part, int rates)
    {
        if (!_bankedKwh.TryGetValue(part, out var kwh) || kwh.Length != rates) _bankedKwh[part] = kwh = new decimal[rates];
        return kwh;
    }
}
