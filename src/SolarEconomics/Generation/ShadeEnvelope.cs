using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Seasonal shade by the place's own clear hours: for each month and hour the best it ever reached, beside a clear sky without shade.</summary>
/// <remarks>Shares are relative to the usual level, so a model that is too high shades nothing. Immutable, so safe to share between threads.</remarks>
public sealed partial class ShadeEnvelope : IFinding
{
    private const double ClearShare = 0.95;
    private const int FewestIntervals = 20;
    private const int FewestOnClearDays = 6;
    private const double FreeAbove = 0.9;
    private const double ClearDayShare = 0.85;

    /// <summary>Haze of the clear sky beside which shade is found and laid on again.</summary>
    internal const double LinkeTurbidity = 3;
    private const double LeastClearKwPerKwp = 0.05;
    private readonly double?[,] _share = new double?[12, 24];

    private ShadeEnvelope(string device) => Device = device;

    /// <summary>Name of the device behind the arrays.</summary>
    public string Device { get; }

    /// <summary>Below this share of its usual level an hour is called shaded: 0.75, as haze and dirt alone take up to a fifth of a low sun (common practice, no source).</summary>
    public const double ShadedBelow = 0.75;

    /// <summary>Energy that shade takes in the record's hours, scaled to a year: what shaded hours made over their share, less what they made. Unit: kWh a year. A lower bound on dull days.</summary>
    public double LostKwhPerYear { get; private set; }

    /// <summary>Share that the clearest hours reach; <see langword="null"/> where the sun is too low or the record too short.</summary>
    /// <param name="month">1 is January.</param>
    /// <param name="hour">Hour of the site's clock, 0 to 23.</param>
    public double? Share(int month, int hour) =>
        _share[(int)Require.Within(month, 1, 12, "month; 1 is January") - 1, (int)Require.Within(hour, 0, 23, "hour of the day")];

    /// <summary>Months and hours called shaded, in order.</summary>
    public IReadOnlyList<(int Month, int Hour, double Share)> Shaded =>
        [.. from month in Enumerable.Range(1, 12) from hour in Enumerable.Range(0, 24) where Share(month, hour) < ShadedBelow select (month, hour, Share(month, hour)!.Value)];

    /// <summary>Finds the envelope of one place.</summary>
    /// <param name="site">The site; its plant has the arrays, so that their planes are known.</param>
    /// <param name="readings">Interval generation, a year or more.</param>
    /// <param name="device">Name of the device at work there last.</param>
    /// <exception cref="UnknownNameException">No generation of that name is on record.</exception>
    /// <exception cref="ArgumentException">No array stands behind the device.</exception>
    public static ShadeEnvelope Of(Site site, Readings readings, string device)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(device);
        var records = SiteRecords.Lay(site, readings);
        var place = records.GenerationOf(device);
        var line = site.Plant.LineOf(device);
        var own = site.Plant.Placements.Where(p => line.Any(d => string.Equals(d.Name, p.Device, StringComparison.Ordinal))).ToList();
        if (own.Count == 0) throw Throw.NoArrays(device);
        // One plane stands for all of a device: that of its last array.
        var clear = ClearShape.KwPerKwp(site, records.Grid, place.Device, own[^1]);
        var envelope = new ShadeEnvelope(device);
        envelope.Fill(records, place, line, clear);
        return envelope;
    }

    private void Fill(SiteRecords records, GenerationRecord place, IReadOnlyList<Device> line, double[] clear)
    {
        var ratios = new List<double>[12, 24];
        var kwh = new double[12, 24];
        var hours = 0.0;
        for (var i = 0; i < records.Grid.Count; i++)
        {
            var kwp = line.Sum(d => d.RatedKwpOn(records.Days[i]));
            if (!place.Series.Known[i] || !(kwp > 0)) continue;
            hours += records.Grid.StepHours;
            if (clear[i] < LeastClearKwPerKwp) continue;
            var local = (records.Grid.StartOf(i) + (records.Grid.Step / 2)).InZone(records.Site.Zone);
            (ratios[local.Month - 1, local.Hour] ??= []).Add(place.Series.Kwh[i] / (kwp * records.Grid.StepHours * clear[i]));
            kwh[local.Month - 1, local.Hour] += place.Series.Kwh[i];
        }
        for (var m = 0; m < 12; m++)
            for (var h = 0; h < 24; h++)
                if (ratios[m, h] is { Count: >= FewestIntervals } values) _share[m, h] = Statistics.Percentile([.. values], ClearShare);
        double[] told = [.. _share.Cast<double?>().OfType<double>()];
        if (told.Length == 0) return;
        var usual = Statistics.Percentile(told, 0.6);
        for (var m = 0; m < 12; m++)
            for (var h = 0; h < 24; h++) _share[m, h] /= usual;
        LowerOnClearDays(records, place, line, clear, usual);
        for (var m = 0; m < 12; m++)
            for (var h = 0; h < 24; h++)
                if (_share[m, h] is { } share and < ShadedBelow and > 0) LostKwhPerYear += kwh[m, h] * ((1 / share) - 1) * 8766 / hours;
    }

    /// <summary>An hour that is shaded on some days of its month reaches its best on the others; its mean over clear days tells both.</summary>
    private void LowerOnClearDays(SiteRecords records, GenerationRecord place, IReadOnlyList<Device> line, double[] clear, double usual)
    {
        var grid = records.Grid;
        var (made, possible, count) = (new double[12, 24], new double[12, 24], new int[12, 24]);
        for (var from = 0; from < grid.Count;)
        {
            var to = from;
            while (to < grid.Count && records.Days[to] == records.Days[from]) to++;
            var rated = line.Sum(d => d.RatedKwpOn(records.Days[from])) * grid.StepHours * usual;
            (int At, int Hour)[] seen = [.. Enumerable.Range(from, to - from).Where(i => rated > 0 && place.Series.Known[i] && clear[i] >= LeastClearKwPerKwp)
                .Select(i => (i, (grid.StartOf(i) + (grid.Step / 2)).InZone(records.Site.Zone).Hour))];
            var month = records.Days[from].Month - 1;
            var free = seen.Where(x => _share[month, x.Hour] >= FreeAbove).ToList();
            var clearness = free.Count > 0 ? free.Sum(x => place.Series.Kwh[x.At]) / free.Sum(x => clear[x.At] * rated) : 0;
            if (clearness >= ClearDayShare)
            {
                foreach (var (i, hour) in seen)
                    (made[month, hour], possible[month, hour], count[month, hour]) = (made[month, hour] + place.Series.Kwh[i], possible[month, hour] + (clear[i] * rated * clearness), count[month, hour] + 1);
            }
            from = to;
        }
        for (var m = 0; m < 12; m++)
            for (var h = 0; h < 24; h++)
                if (_share[m, h] is { } best && count[m, h] >= FewestOnClearDays) _share[m, h] = Math.Min(best, made[m, h] / possible[m, h]);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var shaded = Shaded;
        return new Finding(
            shaded.Count == 0 ? "no shade found" : Wording.Kwh(LostKwhPerYear, culture),
            shaded.Count == 0
                ? $"at {Device}: in every month and hour that can be told, the clearest moments come near a free sky."
                : string.Create(culture, $"a year, about, is taken by shade at {Device}: {shaded.Count} of the month's hours stay below {ShadedBelow * 100:0} % even at their clearest."))
        {
            Tables = [new FindingTable("Clearest moments, % of usual, by month and hour", ["Month", .. Hours().Select(h => h.ToString("00", culture))], [.. Enumerable.Range(1, 12).Select(month => (IReadOnlyList<string>)
            [
                culture.DateTimeFormat.GetAbbreviatedMonthName(month),
                .. Hours().Select(hour => Share(month, hour) is { } share ? (share * 100).ToString("0", culture) : ""),
            ])])],
            Notes =
            [
                "For each month and hour the 95th percentile of what was made over what a clear sky without shade would give, relative to the usual level, or the mean of clear days where that is lower. An empty field cannot be told.",
                "Hills, trees, chimneys and rows shade alike here; haze near the horizon and a throttled noon look like shade too.",
            ],
        };
    }

    private IEnumerable<int> Hours() => Enumerable.Range(0, 24).Where(hour => Enumerable.Range(1, 12).Any(month => Share(month, hour) is not null));
}
