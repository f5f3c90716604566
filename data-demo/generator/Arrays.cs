using NodaTime;

namespace AlderWeir;

/// <summary>The three arrays of Alder Weir and their modules from day to day.</summary>
internal static class Arrays
{
    internal const int South = 0;
    internal const int West = 1;
    internal const int Ground = 2;

    /// <summary>True share of the ground array's counted DC that reaches AC. The plant's description states only 0.93 to 0.97.</summary>
    internal const double GroundDcToAc = 0.955;

    private const double SmallModuleKwp = 0.27;
    private const double LargeModuleKwp = 0.55;

    internal static readonly SolarArray[] All =
    [
        new("south roof", TiltDeg: 38, AzimuthDeg: 178, HorizonDeg: 3, InverterW: 3600) { RatedKwp = SouthKwp, HealthyKwp = SouthHealthyKwp },
        new("west roof", TiltDeg: 38, AzimuthDeg: 252, HorizonDeg: 5, InverterW: 5000) { RatedKwp = WestKwp, HealthyKwp = WestHealthyKwp },
        new("ground array", TiltDeg: 30, AzimuthDeg: 170, HorizonDeg: 7, InverterW: 5000) { RatedKwp = GroundKwp, HealthyKwp = GroundKwp, DcToAc = GroundDcToAc, Kept = 0.91 },
    ];

    private static double SouthHealthyKwp(LocalDate day) => day < Timeline.SouthOn ? 0 : 14 * SmallModuleKwp;

    private static double WestHealthyKwp(LocalDate day) =>
        day < Timeline.WestOn ? 0 : day < Timeline.StringMoved ? 18 * SmallModuleKwp : 12 * SmallModuleKwp;

    /// <summary>Two strings of seven; one of them hung on an open isolator for eleven days.</summary>
    private static double SouthKwp(LocalDate day) =>
        day < Timeline.SouthOn ? 0
        : day >= Timeline.IsolatorOpened && day < Timeline.IsolatorClosed ? 7 * SmallModuleKwp
        : 14 * SmallModuleKwp;

    /// <summary>Three strings of six, of which one left; none worked while the inverter was down.</summary>
    private static double WestKwp(LocalDate day) =>
        day < Timeline.WestOn || (day >= Timeline.WestFailed && day < Timeline.WestReplaced) ? 0
        : day < Timeline.StringMoved ? 18 * SmallModuleKwp
        : 12 * SmallModuleKwp;

    /// <summary>Six large modules; six small ones from the west roof joined them on a tracker input of their own.</summary>
    private static double GroundKwp(LocalDate day) =>
        day < Timeline.GroundOn ? 0
        : day < Timeline.StringMoved ? 6 * LargeModuleKwp
        : (6 * LargeModuleKwp) + (6 * SmallModuleKwp);
}
