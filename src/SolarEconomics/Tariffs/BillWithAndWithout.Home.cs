using System.Globalization;

namespace SolarEconomics;

/// <content>Asked for a home from its records, and said.</content>
public sealed partial record BillWithAndWithout
{
    /// <summary>Bills with a battery that the home does not have; <see langword="null"/> where none was asked about.</summary>
    public IReadOnlyList<Bill>? WithProposed { get; init; }

    /// <summary>The battery asked about, in words; <see langword="null"/> where none was.</summary>
    public string? ProposedName { get; init; }

    /// <summary>Whether the home has a battery, so that the bills without it say something. Default: true.</summary>
    public bool HasBattery { get; init; } = true;

    /// <summary>What was filled in the records, one sentence each.</summary>
    public IReadOnlyList<string> RecordNotes { get; init; } = [];

    /// <summary>What the battery asked about would save on today's bills; <see langword="null"/> where none was asked about.</summary>
    public Money? SavedByProposed => WithProposed is null ? null : Sum(Actual) - Sum(WithProposed);

    /// <summary>Bills of a home as it is, without its battery, without any plant, and with a battery that it could have; the others by the flow model.</summary>
    /// <param name="home">Its energy as recorded: <c>HomeEnergy.Of(site, readings, tariffs)</c>.</param>
    /// <param name="proposed">A battery in place of the recorded one or of none. Default: none.</param>
    /// <param name="control">Who decides about the proposed battery. Default: <see cref="Control.SelfConsumption"/>.</param>
    /// <exception cref="RecordException">The records tell no generation.</exception>
    public static BillWithAndWithout Of(HomeEnergy home, Battery? proposed = null, Control? control = null)
    {
        ArgumentNullException.ThrowIfNull(home);
        var actual = home.Bills();
        var with = proposed is null ? null : home.With(proposed, control);
        return new BillWithAndWithout(actual, home.HasBattery ? home.WithoutBattery().Bills() : actual, home.WithoutPlant().Bills())
        {
            WithProposed = with?.Bills(),
            ProposedName = with?.PlantName,
            RecordNotes = home.Notes,
            HasBattery = home.HasBattery,
        };
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        string Figure(Money money) => Wording.Exact(money, culture);
        IReadOnlyList<string> Row(string name, IReadOnlyList<Bill> bills) => [name, Figure(Sum(bills)), Figure(Sum(bills) - Sum(Actual))];
        var proposed = SavedByProposed is { } saved ? $" It would be {Figure(saved)} less {ProposedName}." : "";
        return new Finding(Figure(SavedByAll), $"less on the bills than without any plant{(HasBattery ? $"; {Figure(SavedByBattery)} of it is the battery's" : "")}.{proposed}")
        {
            Notes = [.. HasBattery ? ["Without a battery, generation meets use within each interval: a lower bound of what then flows through the meter."] : Array.Empty<string>(), .. RecordNotes],
            Cautions = [Bill.Caution],
            Tables =
            [
                new FindingTable("Bills with and without", ["home", "bills", "more than today"],
                    [Row("as it is", Actual), .. HasBattery ? [Row("without battery", WithoutBattery)] : Array.Empty<IReadOnlyList<string>>(), Row("without plant", WithoutSolar), .. WithProposed is null ? [] : new[] { Row(ProposedName!, WithProposed) }]),
            ],
        };
    }
}
