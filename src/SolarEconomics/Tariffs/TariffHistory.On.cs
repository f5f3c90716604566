using NodaTime;

namespace SolarEconomics;

/// <content>Laying the history on a grid of intervals.</content>
public sealed partial class TariffHistory
{
    /// <summary>The history laid on a grid, with a bill for each calendar month; first and last month by their days.</summary>
    /// <param name="grid">Intervals of whole seconds, at most a week each.</param>
    /// <param name="zone">The clock of the rates, where the tariff names none, and of the billing days.</param>
    /// <exception cref="TariffException">The grid starts before the first version.</exception>
    /// <exception cref="ArgumentException">The intervals are not of whole seconds.</exception>
    public BillingPlan On(IntervalGrid grid, DateTimeZone zone) => On(grid, zone, new BillingOptions());

    /// <summary>The history laid on a grid, with own billing periods or a meter that keeps another clock.</summary>
    /// <param name="grid">Intervals of whole seconds, at most a week each.</param>
    /// <param name="zone">The clock of the rates, where the tariff names none.</param>
    /// <param name="options">Billing periods and the clock of the billing days.</param>
    /// <exception cref="TariffException">The grid starts before the first version.</exception>
    /// <exception cref="ArgumentException">The intervals are not of whole seconds, or periods overlap.</exception>
    public BillingPlan On(IntervalGrid grid, DateTimeZone zone, BillingOptions options) => BillingPlan.Compile(this, grid, zone, options);
}
