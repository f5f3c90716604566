using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What a site's records say about the flows between, summed over their whole span: bounded where they do not tell, never invented.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed class RecordedFlows : IFinding
{
    private RecordedFlows(FlowBounds total, DateSpan period, Duration interval, IReadOnlyList<string> notes)
    {
        (Total, Period, Interval) = (total, period, interval);
        Notes = notes;
    }

    /// <summary>The lowest and highest sums.</summary>
    public FlowBounds Total { get; }

    /// <summary>The local days that the records cover.</summary>
    public DateSpan Period { get; }

    /// <summary>The interval in which they were weighed: the longest on record.</summary>
    public Duration Interval { get; }

    /// <summary>Rules used, and where records disagreed.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>Bounds the flows between, interval by interval and over the whole.</summary>
    /// <param name="site">The site; its plant gives measurement points, efficiencies to the board, modules and battery.</param>
    /// <param name="readings">Whatever records there are.</param>
    /// <exception cref="RecordException">Neither interval readings nor counters.</exception>
    /// <remarks>
    /// Each end is the sum of the intervals' own ends, which with every interval read is attained. Where a counter bounds intervals that were not read,
    /// the sums are cut to what the balances of the whole span leave: a bound from outside.
    /// Equation of one interval: see <see cref="FlowWindow.Bounds"/>.
    /// </remarks>
    public static RecordedFlows Of(Site site, Readings readings)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(readings);
        var windows = new SiteWindows(SiteRecords.Lay(site, readings), readings);
        var grid = windows.Grid;
        var period = new DateSpan(grid.Start.InZone(site.Zone).Date, (grid.End - Duration.Epsilon).InZone(site.Zone).Date.PlusDays(1));
        var total = windows.Total();
        return new RecordedFlows(total, period, grid.Step, windows.Notes);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => new(FlowBounds.Range(Total.KeptOnSite, culture),
        $"of {FlowBounds.Range(Total.Records.Generation, culture)} made {Total.Kept} on site, {Wording.Days(Period, culture)}. {Total.Doubt(culture)}")
    {
        Tables = [Total.Table(culture)],
        Notes = Notes,
        Cautions = [Cautions.Records],
    };
}
