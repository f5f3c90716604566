using NodaTime;

namespace SolarEconomics;

/// <summary>A fading battery month by month from the records' end: its age and cycles, and what it no longer saves.</summary>
/// <remarks>The arrays' loss comes first: it empties every day in proportion, and the battery loses only what of the rest no longer fits. So nothing is lost twice.</remarks>
internal sealed class BatteryWalk
{
    private readonly BatteryFade _fade;
    private readonly BatteryMonths _months;
    private readonly List<LocalDate> _renewals;
    private readonly double _shareInRecords;
    private LocalDate _since;
    private double _cycles;

    /// <param name="record">The records.</param>
    /// <param name="months">The battery's days at the prices that count.</param>
    /// <param name="fade">How it fades.</param>
    /// <param name="replacements">Parts replaced; none where replacements are not counted.</param>
    internal BatteryWalk(OutlookRecord record, BatteryMonths months, BatteryFade fade, IEnumerable<Replacement> replacements)
    {
        (_fade, _months, _since) = (fade, months, fade.InService);
        var perYear = months.DischargePerYear / fade.UsableKwh;
        if (perYear == 0) throw Throw.NoBatteryInRecords(fade.Part);
        _cycles = perYear * YearsTo(record.RecordEnd);
        var inMiddle = YearsTo(record.RecordMiddle);
        _shareInRecords = fade.Ageing.ShareLeft(inMiddle, perYear * inMiddle);
        if (_shareInRecords <= 0) throw Throw.BatteryGone(fade.Part, fade.InService, record.RecordMiddle);
        _renewals = [.. replacements.Where(r => r.Part == fade.Part).Select(r => record.FirstPurchase.PlusDays((int)Math.Round(r.YearsAfterFirstPurchase * 365.25)))
            .Where(day => day >= record.RecordEnd).Order()];
    }

    /// <summary>Capacity in the month last walked through, as a share of the new one's.</summary>
    internal double ShareOfNew { get; private set; }

    /// <summary>The next month: what is lost of what the records say of it, before the arrays' yield is counted in.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="hours">Its hours.</param>
    /// <param name="yield">What is left of the records' generation.</param>
    internal StoredDay Next(LocalDate middle, double hours, double yield)
    {
        while (_renewals.Count > 0 && _renewals[0] <= middle)
        {
            (_since, _cycles) = (_renewals[0], 0);
            _renewals.RemoveAt(0);
        }
        ShareOfNew = _fade.Ageing.ShareLeft(YearsTo(middle), _cycles);
        var lost = yield > 0 ? _months.Lost(middle.Month, hours, _fade.UsableKwh * _shareInRecords, ShareOfNew / _shareInRecords / yield) : default;
        _cycles += yield * (_months.Delivered(middle.Month, hours) - lost.DischargeKwh) / _fade.UsableKwh;
        return lost;
    }

    private double YearsTo(LocalDate day) => Math.Max(0, Period.DaysBetween(_since, day) / 365.25);
}
