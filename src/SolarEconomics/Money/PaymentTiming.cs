namespace SolarEconomics;

/// <summary>When in its period a payment is made.</summary>
public enum PaymentTiming
{
    /// <summary>At the end of each period, as loans are paid.</summary>
    PeriodEnd,

    /// <summary>At the start of each period, as rent is paid.</summary>
    PeriodStart,
}
