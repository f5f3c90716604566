using System.Globalization;

namespace SolarEconomics;

/// <summary>Messages of what is not known for sure: distributions, draws, ranges.</summary>
internal static partial class Throw
{
    internal static UnknownNameException UnknownInput(string name, IEnumerable<string> names) =>
        new($"Found input \"{name}\", expected one that has a distribution: {Nearest.List(name, names, 5)}.");

    internal static ArgumentException PairOfOne(string name) =>
        new($"Found \"{name}\" paired with itself, expected two different inputs.");

    internal static ArgumentException PairTwice(string first, string second) =>
        new($"Found \"{first}\" and \"{second}\" paired twice, expected each pair once.");

    internal static ArgumentException InputTwice(string name) =>
        new($"Found \"{name}\" twice, expected each input once.");

    internal static ArgumentException CorrelationsContradict(string name) =>
        new($"Found correlations that cannot hold together, the contradiction shows at \"{name}\", expected that what moves with a thing moves with what that moves with. " +
            "Bring the correlations of that input nearer to 0.");

    internal static ArgumentException NothingDrawn() =>
        new("Found no input with a distribution and no weather spread, expected at least one of them: without them every draw is alike.");

    internal static ArgumentException NotPaired(ulong seed, int draws, ulong otherSeed, int otherDraws) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found {draws} draws from seed {seed} beside {otherDraws} from seed {otherSeed}, expected one seed and one number of draws: only then does each draw meet its twin. Draw both with the same options and without a stop rule."));

    internal static ArgumentException ReachesTooFar(string input, double value, string expected) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{input}: found a distribution whose middle is {value}, expected {expected}."));

    internal static UnknownNameException UnknownPart(string part, IEnumerable<string> parts) =>
        new($"Found part \"{part}\", expected one of the assumed replacements: {Nearest.List(part, parts, 5)}. Add it to the assumptions first.");

    internal static ArgumentException NoRange() =>
        new("Found no range, expected one or more inputs with the two ends they are moved between, such as OutlookInput.PriceGrowth.Between(0, 0.05).");

    internal static ArgumentException RangeTooFar(OutlookInput input, double low, double high) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{input.Name}: found a range from {low} to {high}, expected one within {input.Lowest} to {input.Highest}."));

    internal static ArgumentException ChosenNotDrawn(OutlookInput input) =>
        new($"{input.Name}: found odds for it, expected a range: it is chosen, not left to chance. Give it two ends with Between, or set it in the assumptions.");

    internal static ArgumentException EndsNotWhole(OutlookInput input, double low, double high) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{input.Name}: found a range from {low} to {high}, expected whole numbers at both ends."));

    internal static ArgumentException NoAmountAt(OutlookInput input, double at, double found) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"{input.Name} at {at}: found the amount {found}, expected a finite number. Search a range that leaves this value out, or give a measure that has an amount there."));
}
