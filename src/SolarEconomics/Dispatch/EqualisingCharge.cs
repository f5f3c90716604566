using NodaTime;

namespace SolarEconomics;

/// <summary>How one equalising charge fared in a run.</summary>
/// <param name="Due">Local time from which it was due; the start of the run where it was due before.</param>
/// <param name="Done">Local time at which it was complete; <see langword="null"/> where the run ended before.</param>
/// <param name="WaitedDays">From due to complete, or to the end of the run. Unit: days.</param>
/// <param name="Kwh">What went in, all of it lost as heat and gas. Unit: kWh.</param>
public sealed record EqualisingCharge(LocalDateTime Due, LocalDateTime? Done, double WaitedDays, double Kwh);
