namespace SolarEconomics;

/// <summary>One limit of a string check: what was found, what is allowed, and how the two stand.</summary>
/// <param name="What">What is compared, in words.</param>
/// <param name="Found">Value found, in <paramref name="Unit"/>; <see langword="null"/> where a figure is missing.</param>
/// <param name="Limit">Limit, in <paramref name="Unit"/>; <see langword="null"/> where it is missing.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Verdict">How they stand.</param>
/// <param name="Why">What is missing, or how the value was reckoned.</param>
public sealed record StringLimit(string What, double? Found, double? Limit, string Unit, Verdict Verdict, string Why)
{
    /// <summary>Whether the value must reach the limit instead of staying below it.</summary>
    public bool IsLeast { get; init; }

    /// <summary>Room left as a share of the limit, below 0 where it is passed; <see langword="null"/> where it cannot be told.</summary>
    /// <remarks>Equation: (limit − found) / limit, or (found − limit) / limit where the limit is the least.</remarks>
    public double? Margin => Found is { } found && Limit is { } limit && limit != 0 ? (IsLeast ? found - limit : limit - found) / limit : null;
}
