namespace SolarEconomics;

/// <summary>What one option is worth beside doing nothing. Nominal, project view, valued at the end of the records.</summary>
/// <param name="Option">The option.</param>
/// <param name="Npv">Net present value.</param>
/// <param name="Invested">Present value of what is bought and replaced, less what displaced parts sell for and replacements it avoids.</param>
/// <param name="Sir">Savings-to-investment ratio; <see langword="null"/> where nothing is invested. It never ranks options that exclude each other.</param>
/// <param name="PaybackYears">Lasting payback in years from the option's day; <see langword="null"/> where it is not within the horizon.</param>
/// <param name="YearlyWorth">The level yearly amount to the horizon that is worth as much.</param>
/// <param name="BreakEvenPrice">Price at which it is worth just as much as doing nothing; <see langword="null"/> where it costs nothing or no price helps.</param>
/// <param name="FlipPrice">Price at which the choice changes: up to it the best option stays the best, below it another would become the best; <see langword="null"/> where no price changes it.</param>
/// <param name="OwnerNpv">Net present value with the loan in the owner's pocket; <see langword="null"/> without a loan.</param>
/// <remarks>Equation: SIR = present savings ÷ (investment + replacement − salvage). Source: money-13.</remarks>
public sealed record OptionResult(
    UpgradeOption Option, Money Npv, Money Invested, double? Sir, double? PaybackYears, Money YearlyWorth, Money? BreakEvenPrice, Money? FlipPrice, Money? OwnerNpv);
