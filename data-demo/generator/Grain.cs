namespace AlderWeir;

/// <summary>The smallest energy that the scenario knows: one milliwatt for one step of five minutes, so that whole watts are whole grains.</summary>
internal static class Grain
{
    /// <summary>One grain in kWh.</summary>
    internal const double Kwh = 1e-6 / 12;

    /// <summary>The energy of a power over one step, in grains.</summary>
    internal static long Of(double watts) => (long)Math.Round(watts * 1000);
}
