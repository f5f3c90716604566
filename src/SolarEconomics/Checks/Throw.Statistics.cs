using System.Globalization;

namespace SolarEconomics;

/// <summary>Messages of the statistics.</summary>
internal static partial class Throw
{
    internal static ArgumentException TooFewValues(int found, int atLeast) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {Wording.CountInMessage(found, "value")}, expected at least {atLeast}. A longer record is needed to tell."));

    internal static ArgumentException ValueNotFinite(double value, int index) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {value} at place {index + 1}, expected finite numbers. Leave missing readings out instead of passing NaN."));

    internal static ArgumentException UnequalColumns(int first, int second) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found columns of {first} and {Wording.CountInMessage(second, "value")}, expected one length."));

    internal static ArgumentException AllAlike(double value, int count) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found {Wording.CountInMessage(count, "time")} the same value {value}, expected values that differ: nothing can be fitted to them."));

    internal static ArgumentException RepeatedColumn(int column) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found that column {column} follows from the columns before it, expected columns that each add something. Leave it out."));

    internal static ArgumentException NotATriangle(double low, double mode, double high) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found lowest {low}, likeliest {mode}, highest {high}, expected them in this order, lowest below highest."));

    internal static ArgumentException EndsNotInOrder(double low, double high) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found lowest {low} and highest {high}, expected two finite numbers, the lowest first."));

    internal static ArgumentException NotACase(double value, double share) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found the value {value} with a share of {share}, expected a finite value and a share above 0; 25 % of cases is written 0.25."));

    internal static ArgumentException SharesNotWhole(double sum) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found shares that sum to {sum}, expected 1: every case is one of the values."));
}
