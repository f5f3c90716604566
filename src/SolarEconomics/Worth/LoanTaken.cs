using NodaTime;

namespace SolarEconomics;

/// <summary>A loan that paid for the plant, and the day on which it was paid out.</summary>
/// <param name="Name">A few words: the bank, or what it was for.</param>
/// <param name="Loan">Its terms. Nominal, in the site's currency, with 1, 2, 3, 4, 6 or 12 payments a year.</param>
/// <param name="On">Day on which it is paid out; payments fall on the same day of later months.</param>
/// <remarks>It belongs to the owner's view (<see cref="Outlook.Owner"/>) only; the outlook itself is the project's and leaves it out.</remarks>
public sealed record LoanTaken(string Name, Loan Loan, LocalDate On);
