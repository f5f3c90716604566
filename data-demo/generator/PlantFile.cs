using System.Globalization;

namespace AlderWeir;

/// <summary>Writes plant.json: what the owner knows of the devices. That 0.955 of the ground array's DC reaches AC is not known.</summary>
internal static class PlantFile
{
    internal static string Write() => string.Create(CultureInfo.InvariantCulture, $$"""
        {
          "version": 1,
          "note": "{{Text.Invented}}",
          "devices": [
            {
              "name": "south roof",
              "note": "14 x 270 W in two strings of seven on a second-hand inverter of 3.6 kW.",
              "point": "inverterAcOut",
              "ratedKwp": 3.78,
              "ratedAcKw": 3.6,
              "inService": "{{Text.Day(Timeline.SouthOn)}}",
              "openingKwh": 4812,
              "standbyW": {{Standby.SouthW}}
            },
            {
              "name": "west roof first inverter",
              "note": "18 x 270 W in three strings of six on an inverter of 5 kW, which failed.",
              "point": "inverterAcOut",
              "ratedKwp": 4.86,
              "ratedAcKw": 5,
              "inService": "{{Text.Day(Timeline.WestOn)}}",
              "outOfService": "{{Text.Day(Timeline.WestFailed)}}",
              "standbyW": {{Standby.WestW}}
            },
            {
              "name": "west roof",
              "note": "The same modules on another inverter of 5 kW; one string of six left for the ground array.",
              "replaces": "west roof first inverter",
              "point": "inverterAcOut",
              "ratedKwp": 3.24,
              "ratedAcKw": 5,
              "stages": [
                { "from": "{{Text.Day(Timeline.WestReplaced)}}", "ratedKwp": 4.86 },
                { "from": "{{Text.Day(Timeline.StringMoved)}}", "ratedKwp": 3.24 }
              ],
              "inService": "{{Text.Day(Timeline.WestReplaced)}}",
              "standbyW": {{Standby.WestW}}
            },
            {
              "name": "ground array",
              "note": "6 x 550 W, later with 6 x 270 W from the west roof. Its controller counts DC; the inverter behind it has no counter.",
              "point": "controllerDcOut",
              "ratedKwp": 4.92,
              "ratedAcKw": 5,
              "stages": [
                { "from": "{{Text.Day(Timeline.GroundOn)}}", "ratedKwp": 3.30 },
                { "from": "{{Text.Day(Timeline.StringMoved)}}", "ratedKwp": 4.92 }
              ],
              "inService": "{{Text.Day(Timeline.GroundOn)}}",
              "toAcLow": 0.93,
              "toAcHigh": 0.97,
              "standbyW": {{Standby.GroundW}}
            },
            {
              "name": "battery",
              "note": "Charge and discharge are counted on the AC side of its inverter. It is never charged from the grid.",
              "point": "inverterAcOut",
              "inService": "{{Text.Day(Timeline.BatteryOn)}}",
              "usableKwh": {{Battery.UsableKwh}},
              "standbyW": {{Standby.BatteryW}}
            }
          ]
        }

        """);
}
