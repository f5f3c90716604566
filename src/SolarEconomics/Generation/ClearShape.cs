namespace SolarEconomics;

/// <summary>What an array would make under a sky without cloud or shade, per kWp: beside it a record shows shade, clouds and what was held back.</summary>
internal static class ClearShape
{
    /// <summary>Power in each step. Unit: kW/kWp at AC, new modules.</summary>
    internal static double[] KwPerKwp(Site site, IntervalGrid grid, Device device, Placement placement)
    {
        var bare = placement with { Array = placement.Array with { Face = placement.Array.Face with { Horizon = Horizon.Free, Rows = null } }, Input = 1 };
        var acW = PlantOutput.ModelOf(site.Plant, device, [bare], placement.From ?? NodaTime.LocalDate.MinIsoValue, new PlantOutputOptions { Ageing = Ageing.None })
            .Run(site, Weather.Clear(site, grid, ShadeEnvelope.LinkeTurbidity)).AcW;
        var clear = new double[grid.Count];
        for (var i = 0; i < clear.Length; i++) clear[i] = acW[i] / 1000 / placement.Array.RatedKwp;
        return clear;
    }
}
