namespace AlderWeir;

/// <summary>Writes the README.md that stands beside the data.</summary>
internal static class ReadmeFile
{
    internal static string Write() => $"""
        # Alder Weir, an invented site

        **Invented data.** {Text.Invented["Invented data. ".Length..]}
        Nothing here was measured, and no price was ever offered.

        Alder Weir is a former water mill on the west coast of Ireland (clock of Europe/Dublin, money in EUR): a house and a joinery workshop with two
        roof arrays, a ground array and a battery, built up in stages. About 0.3 of the electricity is used by the workshop, which reclaims the sales tax
        on it (`TaxReclaimedShare = 0.3` on the site); the house does not.

        | file | what it holds |
        | --- | --- |
        | `meter.csv` | half hours from 1 March 2022 to 1 March 2025: import, export, generation of each array, battery charge and discharge, "battery full" |
        | `counters.csv` | lifetime counters as read from displays and photographs |
        | `ledger.csv` | receipts: purchases, grant, repairs, running costs, a sale, a refused claim |
        | `tariffs.json` | a flat tariff from 2022, an evening-peak tariff from March 2024, a feed-in rate in both, sales tax of 9 % |
        | `plant.json` | the devices: rated power, measurement point, dates, opening values, standby; types, faces and arrays with the string that moved |

        ## Its off-grid sister, the refuge

        A mountain refuge on the same coast, with no grid: 3.6 kWp on a wall, a lead-acid battery of 33.6 kWh of which half is used, an inverter with charger and a
        used generator of 4.5 kW. Nothing counts the generator's kWh: they have to be told from its fuel and hours, as a range. Its data sheet says 0.09 litres an hour
        per rated kW and 0.25 litres per kWh; the engine is a little off it.

        | file | what it holds |
        | --- | --- |
        | `refuge-generator.csv` | the hour meter, litres, starts, oil and prices, once a month; in September 2023 the tank was not filled to the brim |
        | `refuge-battery.csv` | capacity tests with temperature, cell spread, water, cycles, equalising |
        | `refuge-counters.csv` | lifetime counters of the array (DC) and of the battery, in and out |
        | `refuge-ledger.csv` | receipts; fuel and oil stand with the generator |
        | `refuge-plant.json` | the devices |

        ## What the records hide or hold

        | when | what happened | where it shows |
        | --- | --- | --- |
        | from the start | the south roof's inverter is second-hand: its counter began at 4,812 kWh | `counters.csv`, `plant.json` |
        | 14 Apr 2022 | the battery switched on; the west roof follows on 20 April, the ground array on 10 September | zeros in `meter.csv` before |
        | 10 Sep 2022 to 10 Feb 2023 | the ground array's logger kept nothing for five months; its counter ran on | empty fields; `counters.csv` |
        | always | the ground array is counted in DC at its controller; how much of it reaches AC is known only as 0.93 to 0.97 | `plant.json` |
        | 5 to 27 Jun 2023 | the west roof's inverter died, was replaced, and the warranty claim was refused | empty fields; `ledger.csv` |
        | 30 Jul 2023 | two digits of a photographed reading were swapped | `counters.csv` |
        | 19 Aug 2023 | a string of six modules moved from the west roof to the ground array, whose counter began again at 0 | `plant.json`, `counters.csv` |
        | 5 to 9 Oct 2023 | the south roof's logger hung | empty fields |
        | 1 Mar 2024 | the evening-peak tariff came into force | `tariffs.json` |
        | 3 to 14 May 2024 | an isolator of the south roof stayed open after cleaning: half its modules gave nothing for eleven days | half the yield of the sister arrays |
        | 12 Oct 2024 | the battery's software was renewed | empty fields |
        | five times | the meter's data service was down for hours or days | empty import, export or both |
        | spring and autumn | a skipped hour, and a repeated hour whose rows stand twice | `meter.csv` |

        Export is limited to 5.5 kW. Once the battery is full the arrays may be throttled, and no counter sees what they could have made: `battery full`
        marks those half hours.

        ## Making the files again

        ```
        dotnet run --project data-demo/generator
        ```

        writes the same bytes every time; a test compares them with the files here. The generator also hands the true flows, which no record shows, to
        the tests: `AlderWeir.Scenario.Make(seed).Truth`, and `.Refuge` for the sister site.

        """;
}
