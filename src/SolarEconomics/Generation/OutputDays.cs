using NodaTime;

namespace SolarEconomics;

/// <summary>What one place of the plant made day by day, with the rated power behind it. A day of which anything is missing has no energy here.</summary>
internal sealed class OutputDays
{
    private OutputDays(string name, IReadOnlyList<Device> line, LocalDate[] dates)
    {
        (Name, Line, Dates) = (name, line, dates);
        Kwh = new double?[dates.Length];
        Kwp = new double[dates.Length];
        IsBetweenDevices = new bool[dates.Length];
        ClippedKwh = new double[dates.Length];
        HoursAtLimit = new double[dates.Length];
    }

    /// <summary>Name of the device at work there last, or of the reference.</summary>
    internal string Name { get; }

    /// <summary>The devices that worked there, the first of them first.</summary>
    internal IReadOnlyList<Device> Line { get; }

    internal LocalDate[] Dates { get; }

    internal double?[] Kwh { get; }

    internal double[] Kwp { get; }

    /// <summary>About what an inverter at its limit clipped.</summary>
    internal double[] ClippedKwh { get; }

    internal double[] HoursAtLimit { get; }

    /// <summary>Whether this is a model through weather, not a place of the plant.</summary>
    internal bool IsWeather => Line.Count == 0;

    /// <summary>Days on which one device no longer worked and the next did not yet: nothing was made, whatever the record holds.</summary>
    internal bool[] IsBetweenDevices { get; }

    /// <summary>Energy per rated power, what was clipped added; <see langword="null"/> where either is not known. Unit: kWh/kWp a day.</summary>
    internal double? Yield(int day) => Kwh[day] is { } kwh && Kwp[day] > 0 ? (kwh + ClippedKwh[day]) / Kwp[day] : null;

    /// <summary>The days of one place of laid records.</summary>
    internal static OutputDays Of(GenerationRecord place, SiteRecords records)
    {
        var line = records.Site.Plant.LineOf(place.Device.Name);
        var days = new OutputDays(place.Device.Name, line.Count > 0 ? line : [place.Device], [.. records.Days.Distinct()]);
        days.Sum(records, i => place.Series.Known[i] ? place.Series.Kwh[i] : null);
        var kwp = 0.0;
        for (var d = 0; d < days.Dates.Length; d++)
        {
            var now = days.Line.Sum(device => device.RatedKwpOn(days.Dates[d]));
            days.IsBetweenDevices[d] = now == 0 && kwp > 0 && days.Line.Any(device => device.InService > days.Dates[d]);
            if (now > 0 || !days.IsBetweenDevices[d]) kwp = now;
            days.Kwp[d] = kwp;
            if (days.IsBetweenDevices[d]) days.Kwh[d] = 0;
        }
        return days;
    }

    /// <summary>What a model makes of weather over the days of a record, as a reference beside sister arrays.</summary>
    internal static OutputDays Of(ModelledReference modelled, SiteRecords records)
    {
        var days = new OutputDays("the weather", [], [.. records.Days.Distinct()]);
        var yields = modelled.Days(records.Site.Zone);
        for (var d = 0; d < days.Dates.Length; d++)
        {
            days.Kwp[d] = 1;
            days.Kwh[d] = yields.TryGetValue(days.Dates[d], out var yield) ? yield : null;
        }
        return days;
    }

    /// <summary>Notes what an inverter at its limit clipped, so that a day is judged by what its modules could have made.</summary>
    internal void AddClipped(SiteRecords records, AtLimit atLimit)
    {
        for (var (i, d) = (0, 0); i < records.Grid.Count; i++)
        {
            while (Dates[d] != records.Days[i]) d++;
            if (!atLimit.IsAt[i]) continue;
            HoursAtLimit[d] += records.Grid.StepHours;
            ClippedKwh[d] += atLimit.Kwh[i] ?? 0;
        }
    }

    private void Sum(SiteRecords records, Func<int, double?> kwhOf)
    {
        var (d, sum, isWhole) = (0, 0.0, true);
        for (var i = 0; i <= records.Grid.Count; i++)
        {
            if (i == records.Grid.Count || records.Days[i] != Dates[d])
            {
                Kwh[d++] = isWhole ? sum : null;
                if (i == records.Grid.Count) return;
                (sum, isWhole) = (0, true);
            }
            if (kwhOf(i) is { } kwh) sum += kwh;
            else isWhole = false;
        }
    }
}
