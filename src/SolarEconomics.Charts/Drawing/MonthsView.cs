using NodaTime;

namespace SolarEconomics.Charts;

/// <summary>Months in order and without holes: a month that has no record stands with all of its hours missing.</summary>
internal sealed class MonthsView
{
    private const double HoursPerDay = 24;

    internal MonthsView(IReadOnlyList<MonthOfEnergy> months)
    {
        Recorded = [.. months.OrderBy(m => m.Month)];
        var byMonth = Recorded.ToDictionary(m => m.Month);
        for (var month = Recorded[0].Month; month <= Recorded[^1].Month; month = month.PlusMonths(1))
        {
            Months.Add(month);
            var found = byMonth.GetValueOrDefault(month);
            Found.Add(found);
            var hours = month.Calendar.GetDaysInMonth(month.Year, month.Month) * HoursPerDay;
            // A month with a clock change has an hour more or less; the share stays within 1.
            MissingShare.Add(found is null ? 1 : Math.Clamp(found.MissingHours / hours, 0, 1));
        }
    }

    internal IReadOnlyList<MonthOfEnergy> Recorded { get; }

    internal List<YearMonth> Months { get; } = [];

    internal List<MonthOfEnergy?> Found { get; } = [];

    internal List<double> MissingShare { get; } = [];

    /// <summary>The stack from below, in the order that every chart keeps; without destinations that no month has.</summary>
    internal IEnumerable<(Destination Destination, string Name, IReadOnlyList<double> Kwh)> Series
    {
        get
        {
            (Destination, string, Func<MonthOfEnergy, double>)[] all =
            [
                (Destination.UsedDirectly, "used directly", m => m.UsedDirectlyKwh),
                (Destination.UsedFromStorage, "used out of the battery", m => m.UsedFromStorageKwh),
                (Destination.Exported, "exported", m => m.ExportedKwh),
                (Destination.Lost, "lost", m => m.LostKwh),
            ];
            foreach (var (destination, name, kwh) in all)
            {
                var values = Found.Select(m => m is null ? 0 : kwh(m)).ToList();
                if (values.Exists(v => v > 0))
                {
                    yield return (destination, name, values);
                }
            }
        }
    }

    internal IReadOnlyList<double?> ImportedKwh => [.. Found.Select(m => m?.ImportedKwh)];
}
