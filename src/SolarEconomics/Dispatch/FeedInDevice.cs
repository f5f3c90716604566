namespace SolarEconomics;

/// <summary>An inverter or controller with the arrays in front of it: mostly one, several where they share an inverter.</summary>
internal sealed class FeedInDevice
{
    private readonly ArraySupply[] _arrays;
    private readonly SharedInverter? _shared;
    private readonly ReadOnlyMemory<double> _inFrontKwh;
    private readonly double _efficiency;
    private readonly double _mostKw;
    private readonly double _ratedKw;
    private readonly double _mostInputShare;

    private FeedInDevice(ArraySupply[] arrays)
    {
        (_arrays, _shared) = (arrays, arrays[0].Inverter);
        (_efficiency, _mostKw) = (arrays[0].Efficiency, arrays[0].MostKw);
        _inFrontKwh = arrays.Length == 1 ? arrays[0].PotentialKwh : Sum(arrays);
        if (_shared is not { Type: { } type }) return;
        _ratedKw = type.RatedAcW / 1000;
        _mostInputShare = (type.HighestInputW ?? double.PositiveInfinity) / type.RatedAcW;
    }

    internal IReadOnlyList<ArraySupply> Arrays => _arrays;

    internal Coupling Coupling => _arrays[0].Coupling;

    internal string Name => _shared?.Name ?? (Coupling is Coupling.Ac ? "inverter of " : "controller of ") + _arrays[0].Name;

    /// <summary>The devices of some arrays, in the order of their first array.</summary>
    internal static IReadOnlyList<FeedInDevice> Of(IReadOnlyList<ArraySupply> arrays) =>
    [
        .. arrays.Select((array, k) => (Array: array, Key: array.Inverter?.Name ?? FormattableString.Invariant($"\0{k}")))
            .GroupBy(a => a.Key, a => a.Array, StringComparer.Ordinal).Select(group => new FeedInDevice([.. group])),
    ];

    /// <summary>In front of it, one value per interval. Unit: kWh.</summary>
    internal ReadOnlySpan<double> InFrontKwh => _inFrontKwh.Span;

    /// <summary>Adds to what a bus gets and to what the device's own limits leave out, each counted behind it. Unit: kWh per interval.</summary>
    internal void AddBehind(ReadOnlySpan<double> hours, Span<double> givenKwh, Span<double> clippedKwh)
    {
        for (var i = 0; i < hours.Length; i++)
        {
            var (withoutLimit, given) = BehindKwh(i, hours[i]);
            givenKwh[i] += given;
            clippedKwh[i] += withoutLimit - given;
        }
    }

    /// <summary>Behind it in an interval, without and with its power limit. Unit: kWh.</summary>
    internal (double WithoutLimit, double Given) BehindKwh(int i, double hours)
    {
        var inFrontKwh = InFrontKwh[i];
        if (_shared is null)
        {
            var behindKwh = inFrontKwh * _efficiency;
            return (behindKwh, Math.Min(behindKwh, _mostKw * hours));
        }
        var (fullKwh, curve) = (_ratedKw * hours, _shared.Type.Efficiency);
        var share = inFrontKwh / fullKwh;
        var output = curve.Output(share);
        return (output * fullKwh, Math.Min(share > _mostInputShare ? curve.Output(_mostInputShare) : output, 1) * fullKwh);
    }

    /// <summary>What it loses while it feeds in an energy. Unit: kWh; 0 while it stands still.</summary>
    internal double LostKwh(double fedInKwh, double hours)
    {
        if (_shared is null) return fedInKwh * ((1 / _efficiency) - 1);
        var fullKwh = _ratedKw * hours;
        return fedInKwh > 0 ? _shared.Type.Efficiency.LossAt(fedInKwh / fullKwh) * fullKwh : 0;
    }

    private static double[] Sum(ArraySupply[] arrays)
    {
        var sum = arrays[0].PotentialKwh.ToArray();
        foreach (var array in arrays.AsSpan(1))
            for (var i = 0; i < sum.Length; i++) sum[i] += array.PotentialKwh.Span[i];
        return sum;
    }
}
