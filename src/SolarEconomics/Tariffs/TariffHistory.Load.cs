namespace SolarEconomics;

/// <content>Reading a history from a file.</content>
public sealed partial class TariffHistory
{
    /// <summary>Reads a tariff file (JSON, version 1; the schema is <c>tariff.schema.json</c> beside this code), or a regulator's energy plan
    /// (an answer of the Australian Consumer Data Right's <c>getGenericPlan</c>), which then holds for all time.</summary>
    /// <param name="path">Path of the file; relative paths start at the working folder.</param>
    /// <exception cref="RecordException">The file is missing, empty, no JSON, or wrong somewhere; every mistake is listed with line and column.</exception>
    /// <exception cref="TariffException">The versions contradict each other.</exception>
    public static TariffHistory Load(string path)
    {
        var json = CheckedJson.Read(path, TariffFile.Kind);
        return EnergyPlanFile.IsPlan(json.Root) ? EnergyPlanFile.Read(json) : TariffFile.Read(json, path);
    }
}
