using System.Runtime.InteropServices;

namespace SolarEconomics;

/// <summary>What one billing period hands on to the next within a run: earlier demands and banked energy, by name of the part.</summary>
internal sealed class BillCarry
{
    private readonly Dictionary<string, List<decimal>> _demandKw = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Queue<BankedLot>> _lots = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (DateSpan Turn, decimal Kwh)> _counted = new(StringComparer.Ordinal);
    private readonly Dictionary<string, decimal> _credit = new(StringComparer.Ordinal);

    /// <summary>Demands of the earlier periods, earliest first.</summary>
    internal List<decimal> DemandsKw(string part)
    {
        if (!_demandKw.TryGetValue(part, out var kw)) _demandKw.Add(part, kw = []);
        return kw;
    }

    /// <summary>Energy banked so far, oldest lot first.</summary>
    internal Queue<BankedLot> Lots(string part)
    {
        if (!_lots.TryGetValue(part, out var lots)) _lots.Add(part, lots = []);
        return lots;
    }

    /// <summary>Money carried so far, in the bill's currency.</summary>
    internal ref decimal Credit(string part) => ref CollectionsMarshal.GetValueRefOrAddDefault(_credit, part, out _);

    /// <summary>Energy that blocks which run on have counted in the month, quarter or year that is running.</summary>
    internal ref (DateSpan Turn, decimal Kwh) Counted(string rate) => ref CollectionsMarshal.GetValueRefOrAddDefault(_counted, rate, out _);
}
