namespace AlderWeir;

/// <summary>Writes refuge-plant.json: what the warden knows of the devices.</summary>
internal static class RefugePlantFile
{
    internal static string Write() => $$"""
        {
          "version": 1,
          "note": "{{Text.Invented}} The refuge is its off-grid sister.",
          "devices": [
            {
              "name": "array",
              "note": "3.6 kWp on the south wall, through a charge controller that counts DC.",
              "point": "controllerDcOut",
              "ratedKwp": 3.6,
              "inService": "{{Text.Day(Timeline.Start)}}",
              "toAcLow": 0.88,
              "toAcHigh": 0.93
            },
            {
              "name": "battery in",
              "note": "24 open lead-acid cells of 700 Ah, 33.6 kWh on the plate, half of it used. The monitor's counter into it.",
              "point": "batteryIn",
              "inService": "{{Text.Day(Timeline.Start)}}",
              "usableKwh": 16.8
            },
            {
              "name": "battery out",
              "note": "The monitor's counter out of the same battery.",
              "point": "batteryOut",
              "inService": "{{Text.Day(Timeline.Start)}}"
            },
            {
              "name": "inverter",
              "note": "5 kW inverter with a charger, fed by the 4.5 kW generator. Nothing counts its energy.",
              "point": "unknown",
              "inService": "{{Text.Day(Timeline.Start)}}",
              "standbyW": 32
            }
          ]
        }

        """;
}
