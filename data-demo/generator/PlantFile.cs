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
              "inverter": "3.6 kW inverter",
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
              "inverter": "5 kW inverter",
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
              "inverter": "5 kW inverter",
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
              "inverter": "5 kW inverter",
              "controller": "two-input controller",
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
          ],
          "moduleTypes": [
            {
              "name": "270 W module", "ratedW": 270, "vocV": 38.2, "vmpV": 31.2, "iscA": 9.2, "impA": 8.66,
              "powerPerK": -0.0037, "vocPerK": -0.003, "iscPerK": 0.0005, "areaM2": 1.64, "highestSystemV": 1000, "largestFuseA": 15
            },
            {
              "name": "550 W module", "ratedW": 550, "vocV": 49.8, "vmpV": 41.9, "iscA": 13.98, "impA": 13.13,
              "powerPerK": -0.0037, "vocPerK": -0.0027, "iscPerK": 0.0005, "areaM2": 2.58, "highestSystemV": 1500, "largestFuseA": 25
            }
          ],
          "inverterTypes": [
            {
              "name": "3.6 kW inverter", "ratedAcW": 3600, "efficiency": { "atTenth": 0.93, "atHalf": 0.965, "atFull": 0.96 },
              "highestInputV": 600, "trackingFromV": 120, "trackingToV": 500, "highestInputA": 18, "highestShortCircuitA": 25
            },
            {
              "name": "5 kW inverter", "ratedAcW": 5000, "efficiency": { "atTenth": 0.93, "atHalf": 0.965, "atFull": 0.96 },
              "highestInputV": 600, "trackingFromV": 100, "trackingToV": 520, "highestInputA": 27, "highestShortCircuitA": 40
            }
          ],
          "controllerTypes": [
            { "name": "two-input controller", "highestInputV": 450, "highestShortCircuitA": 20, "inputs": 2, "efficiency": 0.99 }
          ],
          "faces": [
            { "name": "south roof", "tiltDeg": 38, "azimuthDeg": 178, "mounting": "onRoof", "horizon": [ { "azimuthDeg": 0, "elevationDeg": 3 } ], "roomM2": 33 },
            { "name": "west roof", "tiltDeg": 38, "azimuthDeg": 252, "mounting": "onRoof", "horizon": [ { "azimuthDeg": 0, "elevationDeg": 5 } ], "roomM2": 32 },
            { "name": "ground frame", "tiltDeg": 30, "azimuthDeg": 170, "horizon": [ { "azimuthDeg": 0, "elevationDeg": 7 } ], "roomM2": 60 }
          ],
          "arrays": [
            { "name": "south modules", "modules": "270 W module", "inSeries": 7, "strings": 2, "face": "south roof", "device": "south roof", "from": "{{Text.Day(Timeline.SouthOn)}}" },
            {
              "name": "west modules", "modules": "270 W module", "inSeries": 6, "strings": 3, "face": "west roof", "device": "west roof first inverter",
              "from": "{{Text.Day(Timeline.WestOn)}}", "until": "{{Text.Day(Timeline.WestFailed)}}"
            },
            {
              "name": "west modules", "note": "the same modules behind the new inverter", "modules": "270 W module", "inSeries": 6, "strings": 3, "face": "west roof",
              "device": "west roof", "from": "{{Text.Day(Timeline.WestReplaced)}}", "madeOn": "{{Text.Day(Timeline.WestOn)}}"
            },
            { "name": "ground large", "modules": "550 W module", "inSeries": 6, "face": "ground frame", "device": "ground array", "from": "{{Text.Day(Timeline.GroundOn)}}" }
          ],
          "changes": [
            { "on": "{{Text.Day(Timeline.StringMoved)}}", "change": "move", "array": "west modules", "strings": 1, "name": "ground small", "face": "ground frame", "device": "ground array", "input": 2 }
          ],
          "log": [
            { "on": "2024-05-03", "kind": "cleaning", "where": "south roof", "note": "modules washed, isolator opened for it" }
          ]
        }

        """);
}
