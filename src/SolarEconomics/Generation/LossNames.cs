namespace SolarEconomics;

/// <summary>The losses between light and AC, in the order of the energy's way.</summary>
internal static class LossNames
{
    internal const string Shade = "shade";
    internal const string SeasonalShade = "seasonal shade";
    internal const string Glass = "reflection at the glass";
    internal const string Dirt = "dirt";
    internal const string FaintLight = "faint light";
    internal const string Heat = "heat";
    internal const string Age = "age";
    internal const string Mismatch = "mismatch";
    internal const string Cables = "cables";
    internal const string Inputs = "voltage, current and power of the inputs";
    internal const string Controller = "charge controller";
    internal const string InputLimit = "above the input's limit";
    internal const string Inverter = "inverter";
    internal const string Clipping = "clipping";
    internal const string DownTime = "down time";

    internal static List<string> InOrder { get; } =
        [Shade, SeasonalShade, Glass, Dirt, FaintLight, Heat, Age, Mismatch, Cables, Inputs, Controller, InputLimit, Inverter, Clipping, DownTime];
}
