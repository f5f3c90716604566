namespace AlderWeir;

/// <summary>Writes tariffs.json: a flat tariff, and the evening-peak tariff that followed it. All prices are invented.</summary>
internal static class TariffFile
{
    internal static string Write() => $$"""
        {
          "version": 1,
          "note": "{{Text.Invented}}",
          "currency": "EUR",
          "zone": "Europe/Dublin",
          "tariffs": [
            {
              "name": "Flat 24 hours",
              "from": "2022-01-01",
              "tax": 0.09,
              "supply": { "name": "supply charge", "perDay": 0.6410 },
              "import": [
                { "name": "all hours", "perKwh": 0.3187 }
              ],
              "export": [
                { "name": "feed-in", "perKwh": 0.1450 }
              ]
            },
            {
              "name": "Evening peak",
              "from": "{{Text.Day(Timeline.NewTariff)}}",
              "tax": 0.09,
              "supply": { "name": "supply charge", "perDay": 0.7925 },
              "import": [
                { "name": "day", "perKwh": 0.3342 },
                { "name": "night", "perKwh": 0.1755, "when": [ { "hours": [ "23:00-08:00" ] } ] },
                { "name": "evening peak", "perKwh": 0.4128, "when": [ { "days": [ "weekdays" ], "hours": [ "17:00-19:00" ] } ] }
              ],
              "export": [
                { "name": "feed-in", "perKwh": 0.1850 }
              ]
            }
          ]
        }

        """;
}
