using NodaTime;

namespace SolarEconomics;

/// <summary>One local calendar month of energy by destination. Unit: kWh.</summary>
/// <param name="Month">The calendar month, in the site's zone.</param>
/// <param name="UsedDirectlyKwh">Generation used on site in the interval in which it was made.</param>
/// <param name="UsedFromStorageKwh">Generation used on site out of the battery.</param>
/// <param name="ExportedKwh">Sent to the grid.</param>
/// <param name="LostKwh">Lost in conversion, storage or standby.</param>
/// <param name="CensoredHours">Hours in which the plant could have made more than was counted.</param>
/// <param name="ImportedKwh">Bought from the grid.</param>
/// <param name="Value">What the month's generation was worth: bill without the plant less bill with it.</param>
/// <param name="MissingHours">Hours of the month for which a reading was missing and a range stands in.</param>
public sealed record MonthOfEnergy(
    YearMonth Month,
    double UsedDirectlyKwh,
    double UsedFromStorageKwh,
    double ExportedKwh,
    double LostKwh,
    double CensoredHours,
    double ImportedKwh,
    Money Value,
    double MissingHours);
