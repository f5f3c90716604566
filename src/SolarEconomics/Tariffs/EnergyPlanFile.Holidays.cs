namespace SolarEconomics;

/// <content>Public holidays of an energy plan.</content>
internal sealed partial class EnergyPlanFile
{
    private readonly List<string> _holidayDays = [];

    /// <summary>Gives rates that name public holidays those of the plan's state; where that leaves an hour without or with two rates, or no state is
    /// known, a holiday is judged by its weekday and the places that name it are listed.</summary>
    private void ApplyHolidays(string? state)
    {
        if (_holidayDays.Count == 0) return;
        if (state is not null)
        {
            var dated = _tariff with { Holidays = HolidayList.OfCountry("AU", state) };
            // Seven named days hold a holiday too, unless another rate claims the holidays for itself.
            foreach (var choice in new[] { dated, dated with { Parts = [.. dated.Parts.Select(WithoutHolidays)] } })
            {
                if (TariffCheck.Mistakes(choice).Any()) continue;
                _tariff = choice;
                return;
            }
        }
        _unpriced.UnionWith(_holidayDays);
    }

    private static TariffPart WithoutHolidays(TariffPart part) => part is EnergyPart { Rates: var rates } energy && rates.Any(r => r.Windows.Any(ClaimsHolidays))
        ? energy with { Rates = [.. rates.Select(r => r with { Windows = [.. r.Windows.Select(w => w.Days == TariffDays.EveryDay ? w with { Days = TariffDays.Weekdays | TariffDays.Weekends } : w)] })] }
        : part;

    private static bool ClaimsHolidays(RateWindow window) => window.Days.HasFlag(TariffDays.Holidays) && window.Days != TariffDays.EveryDay;
}
