using NodaTime;

namespace SolarEconomics;

/// <summary>The single modules of an array laid into its strings.</summary>
internal static class ModuleSeats
{
    /// <summary>The modules known in each string, at most as many as it has in series: those whose string is known first, then the others in the order of the list.</summary>
    internal static List<IndividualModule>[] Lay(Placement placement, IEnumerable<IndividualModule> modules, LocalDate day)
    {
        var strings = new List<IndividualModule>[placement.Array.Strings];
        for (var s = 0; s < strings.Length; s++) strings[s] = [];
        var own = modules.Where(m => string.Equals(m.ArrayOn(day), placement.Array.Name, StringComparison.Ordinal)).ToList();
        foreach (var module in own.OrderBy(m => m.PlaceOn(day)!.String is null))
        {
            var stated = module.PlaceOn(day)!.String;
            var seat = stated is { } s ? s - 1 : Array.FindIndex(strings, x => x.Count < placement.Array.InSeries);
            if (seat < 0 || seat >= strings.Length || strings[seat].Count >= placement.Array.InSeries) throw Throw.NoSeat(module, placement, own.Count);
            strings[seat].Add(module);
        }
        return strings;
    }

    /// <summary>Share of its rating that a string gives: the lowest current rules, voltages add.</summary>
    /// <param name="array">The array.</param>
    /// <param name="known">The modules known one by one.</param>
    /// <param name="rest">Share left of the modules that are not.</param>
    /// <param name="day">The day.</param>
    /// <param name="ageing">A rule for all; <see langword="null"/>: each type's own.</param>
    /// <remarks>Equation: min sₖ for modules alike; min(sₖ Imp,ₖ) · Σ Vmp,ₖ / (n Imp Vmp) with a type among them that differs, or min(sₖ ratedₖ) / rated where a sheet is silent. Source: gen-12.</remarks>
    internal static double ShareOf(ModuleArray array, IReadOnlyList<IndividualModule> known, double rest, LocalDate day, Ageing? ageing)
    {
        var shares = known.Select(m => (m.Type, Share: m.ShareLeft(day, ageing) ?? rest)).ToList();
        for (var k = known.Count; k < array.InSeries; k++) shares.Add((array.Module, rest));
        if (shares.All(s => s.Type == array.Module)) return shares.Min(s => s.Share);
        var share = shares.All(s => s.Type is { ImpA: not null, VmpV: not null }) && array.Module is { ImpA: { } imp, VmpV: { } vmp }
            ? shares.Min(s => s.Share * s.Type.ImpA!.Value) * shares.Sum(s => s.Type.VmpV!.Value) / (array.InSeries * imp * vmp)
            : shares.Min(s => s.Share * s.Type.RatedW) / array.Module.RatedW;
        return Math.Clamp(share, 0, 1);
    }
}
