using NodaTime;

namespace SolarEconomics;

/// <summary>What a control knows at the start of an interval. One object serves a whole run: read it during the call, do not keep it.</summary>
/// <remarks>Energies of the battery are at its terminals, all others at the board. Unit: kWh in this interval.</remarks>
public sealed partial class Situation
{
    private readonly Timeline _time;
    private readonly Converter _converter;
    private readonly Battery _battery;
    private readonly ReadOnlyMemory<double> _importPrices;
    private readonly ReadOnlyMemory<double> _exportPrices;
    private readonly Lazy<double[]> _highestNextDay;

    internal Situation(Conditions conditions, Battery battery, Converter converter)
    {
        (_time, _battery, _converter) = (conditions.Time, battery, converter);
        (_importPrices, _exportPrices) = (conditions.ImportPricePerKwh, conditions.ExportPricePerKwh);
        _highestNextDay = new Lazy<double[]>(() => PricesAhead.Highest(_importPrices.Span, _time.HoursArray, hoursAhead: 24));
    }

    /// <summary>Number of the interval, from 0.</summary>
    public int Interval { get; internal set; }

    /// <summary>Length of the interval. Unit: h.</summary>
    public double Hours { get; internal set; }

    /// <summary>Local time at its start.</summary>
    public LocalDateTime Local => _time.LocalStartOf(Interval);

    /// <summary>Local hour of the day at its start, with its fraction: 17.5 is half past five. Range: 0 to below 24.</summary>
    public double HourOfDay => MinuteOfDay / 60.0;

    /// <summary>Local minute of the day at its start, as <see cref="HourSpan.Contains"/> takes it. Range: 0 to 1439.</summary>
    public int MinuteOfDay => _time.Clock.MinuteOfDay[Interval];

    /// <summary>Local day of the week.</summary>
    public IsoDayOfWeek DayOfWeek => _time.Clock.WeekdayOf(Interval);

    /// <summary>Local month, 1 to 12.</summary>
    public int Month => (_time.Clock.MonthNumber[Interval] % 12) + 1;

    internal int MonthNumber => _time.Clock.MonthNumber[Interval];

    /// <summary>What the arrays at the board can make.</summary>
    public double AcGenerationKwh { get; internal set; }

    /// <summary>What the arrays at the battery's DC bus can make, there.</summary>
    public double DcGenerationKwh { get; internal set; }

    /// <summary>Wanted use of the home; waiting loads and what switched itself off at low charge are left out.</summary>
    public double UseKwh { get; internal set; }

    /// <summary>What the plant itself takes.</summary>
    public double StandbyKwh { get; internal set; }

    /// <summary>What is proposed for the waiting loads: what must run now to be done in time, and as much more as the surplus covers.</summary>
    public double DeferrableKwh { get; internal set; }

    /// <summary>What of the waiting loads must run now, or is late.</summary>
    public double DeferrableMustKwh { get; internal set; }

    /// <summary>What of the waiting loads may run now.</summary>
    public double DeferrableMayKwh { get; internal set; }

    /// <summary>Inside the cells now.</summary>
    public double StoredKwh { get; internal set; }

    /// <summary>Inside the cells when full.</summary>
    public double UsableKwh { get; internal set; }

    /// <summary>How full the battery is, 0 to 1; 0 without a battery.</summary>
    public double StoredShare => UsableKwh > 0 ? StoredKwh / UsableKwh : 0;

    /// <summary>What generation leaves after use, standby and the proposed waiting loads, as it would arrive at the battery's terminals.</summary>
    public double SurplusKwh { get; internal set; }

    /// <summary>What use, standby and the proposed waiting loads lack, as the battery's terminals would have to give it.</summary>
    public double ShortfallKwh { get; internal set; }

    /// <summary>What the arrays would bring to the board beyond use, standby and waiting loads if the battery rested.</summary>
    public double SurplusAtBoardKwh { get; internal set; }

    /// <summary>What use, standby and waiting loads would lack at the board if the battery rested.</summary>
    public double ShortfallAtBoardKwh { get; internal set; }

    /// <summary>What could be stored, at the battery's terminals, of what the export limit or the converter would else leave unmade.</summary>
    public double OtherwiseCurtailedKwh { get; internal set; }

    /// <summary>The most the battery and its converter can take.</summary>
    public double MostChargeKwh { get; internal set; }

    /// <summary>Whether an equalising charge of the battery is due, full or not.</summary>
    public bool EqualisingIsDue { get; internal set; }

    /// <summary>The part of <see cref="MostChargeKwh"/> that would go beyond full, to level the cells; 0 until the battery is full.</summary>
    public double EqualiseKwh { get; internal set; }

    /// <summary>The most the battery and its converter can take, from arrays and grid, without going over the connection's limit.</summary>
    public double MostChargeFromGridKwh { get; internal set; }

    /// <summary>The most the battery and its converter can give; the reserve for outages is kept while the grid is there.</summary>
    public double MostDischargeKwh { get; internal set; }

    /// <summary>The most of it that use and the export limit together take.</summary>
    public double MostDischargeToGridKwh { get; internal set; }

    /// <summary>The most the converter can take from the board for the battery, at the board.</summary>
    public double MostToBatteryAtBoardKwh { get; internal set; }

    /// <summary>The most that may be sent to the grid.</summary>
    public double MostExportKwh { get; internal set; }

    /// <summary>The most that can be taken from the grid.</summary>
    public double MostImportKwh { get; internal set; }

    /// <summary>Whether there is no grid, for now or ever.</summary>
    public bool GridIsOut { get; internal set; }

    /// <summary>Whether prices of import are known.</summary>
    public bool HasPrices => !_importPrices.IsEmpty;

    /// <summary>Price of import; 0 where no price is known.</summary>
    public double ImportPricePerKwh => _importPrices.IsEmpty ? 0 : _importPrices.Span[Interval];

    /// <summary>Paid for export; 0 where no price is known.</summary>
    public double ExportPricePerKwh => _exportPrices.IsEmpty ? 0 : _exportPrices.Span[Interval];

    /// <summary>Highest price of import in the next 24 hours, this interval included; 0 where no price is known.</summary>
    public double HighestImportPriceNextDay => _importPrices.IsEmpty ? 0 : _highestNextDay.Value[Interval];

    /// <summary>Highest mean import power of one interval in this calendar month so far. Unit: kW.</summary>
    public double PeakImportKw { get; internal set; }

    /// <summary>The most the generator can give now: 0 without one and in its quiet hours.</summary>
    public double MostGeneratorKwh { get; internal set; }

    /// <summary>Whether the generator ran in the interval before.</summary>
    public bool GeneratorRan { get; internal set; }
}
