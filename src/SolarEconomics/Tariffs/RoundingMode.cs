namespace SolarEconomics;

/// <summary>What happens to the part below the last digit.</summary>
public enum RoundingMode
{
    /// <summary>Half and more goes away from zero: 26.125 becomes 26.13, and a credit of 26.125 becomes 26.13.</summary>
    HalfUp,

    /// <summary>Exactly half goes to the even digit: 26.125 becomes 26.12.</summary>
    HalfEven,

    /// <summary>The rest is dropped: 26.129 becomes 26.12.</summary>
    TowardsZero,
}
