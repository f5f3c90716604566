namespace SolarEconomics.Tests;

public class LeadAcidTests
{
    private static readonly LeadAcid s_bank = new(400, 20, 24) { EqualiseHours = 4 };

    [Fact]
    public void At_its_rated_current_and_temperature_it_gives_its_rating()
    {
        Assert.Equal(20, s_bank.HoursAt(20), 12);
        Assert.Equal(400, s_bank.AmpHoursAt(20), 12);
        Assert.Equal(1, s_bank.ShareAt(25));
    }

    [Fact]
    public void Cold_takes_capacity_and_warmth_adds_none()
    {
        Assert.Equal(0.8, s_bank.ShareAt(0), 12);
        Assert.Equal(1, s_bank.ShareAt(40));
    }

    [Fact]
    public void Equalising_costs_what_its_current_carries() => Assert.Equal(365 / 30.0 * 4 * 12 * 24 / 1000, s_bank.EqualisingKwhPerYear, 9);

    [Theory, InlineData(2), InlineData(4), InlineData(8)]
    public void The_last_fifth_takes_the_absorption_hours(double hours)
    {
        var battery = s_bank.AsBattery(20, 25, 0.5, hours);
        var stored = battery.Taper!.FromShare * battery.UsableKwh;
        var taken = 0;
        // By steps of a minute, as a slow twin of the closed form.
        while (stored < battery.UsableKwh - 1e-9)
        {
            stored += battery.MostChargeKwh(stored, 1 / 60.0);
            taken++;
        }
        Assert.InRange(taken / 60.0, hours - 0.02, hours + 0.02);
    }

    [Fact]
    public void Amp_hours_without_a_voltage_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new LeadAcid(400, 20, 0));
}
