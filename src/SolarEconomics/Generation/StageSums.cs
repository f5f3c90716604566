namespace SolarEconomics;

/// <summary>Sums over all steps and arrays at each stage between light and AC. Unit: W times steps.</summary>
internal sealed class StageSums
{
    /// <summary>Rated power at the light on the plane.</summary>
    internal double Nominal { get; set; }

    internal double AfterShade { get; set; }

    internal double AfterSeasonalShade { get; set; }

    internal double AfterReflection { get; set; }

    internal double AfterLowLight { get; set; }

    internal double AfterHeat { get; set; }

    internal double AfterAge { get; set; }

    /// <summary>At the end of the cables: the inverter's DC side, or the controller's input.</summary>
    internal double AfterWiring { get; set; }

    internal double AfterInputs { get; set; }

    internal double AfterController { get; set; }

    internal double AfterInputLimit { get; set; }

    internal double AfterConversion { get; set; }

    internal double AfterClipping { get; set; }

    /// <summary>Steps in which something was clipped.</summary>
    internal long ClippedSteps { get; set; }
}
