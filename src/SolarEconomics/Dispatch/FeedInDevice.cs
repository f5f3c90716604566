namespace SolarEconomics;

/// <summary>An inverter or controller with the arrays in front of it: mostly one, several where they share an inverter.</summary>
internal sealed class FeedInDevice
{
    private readonly ArraySupply[] _arrays;
    private readonly SharedInverter? _shared;
    private readonly double _ratedKw;
    private readonly double _mostInputShare;

    private FeedInDevice(ArraySupply[] arrays)
    {
        (_arrays, _shared) = (arrays, arrays[0].Inverter);
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

    /// <summary>In front of it in an interval. Unit: kWh.</summary>
    internal double InFrontKwh(int i)
    {
        var sum = 0.0;
        foreach (var array in _arrays) sum += array.PotentialKwh.Span[i];
        return sum;
    }

    /// <summary>Behind it in an interval, without and with its power limit. Unit: kWh.</summary>
    internal (double WithoutLimit, double Given) BehindKwh(int i, double hours)
    {
        var inFrontKwh = InFrontKwh(i);
        if (_shared is null)
        {
            var array = _arrays[0];
            var behindKwh = inFrontKwh * array.Efficiency;
            return (behindKwh, double.IsPositiveInfinity(array.MostKw) ? behindKwh : Math.Min(behindKwh, array.MostKw * hours));
        }
        var (fullKwh, curve) = (_ratedKw * hours, _shared.Type.Efficiency);
        var share = inFrontKwh / fullKwh;
        var output = curve.Output(share);
        return (output * fullKwh, Math.Min(share > _mostInputShare ? curve.Output(_mostInputShare) : output, 1) * fullKwh);
    }

    /// <summary>What it loses while it feeds in an energy. Unit: kWh; 0 while it stands still.</summary>
    internal double LostKwh(double fedInKwh, double hours)
    {
        if (_shared is null) return fedInKwh * ((1 / _arrays[0].Efficiency) - 1);
        var fullKwh = _ratedKw * hours;
        return fedInKwh > 0 ? _shared.Type.Efficiency.LossAt(fedInKwh / fullKwh) * fullKwh : 0;
    }
}
