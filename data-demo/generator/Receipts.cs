namespace AlderWeir;

/// <summary>What was paid and received for the plant, in stages. Fitting belongs to what was bought; labour and parts are later work.</summary>
internal static class Receipts
{
    internal static readonly Receipt[] All =
    [
        new(new(2021, 11, 12), "purchase", 1_960.00m, "south roof", "14 modules of 270 W"),
        new(new(2021, 11, 19), "purchase", 540.00m, "south roof", "second-hand 3.6 kW inverter, its counter at 4,812 kWh"),
        new(new(2021, 12, 8), "purchase", 1_085.50m, "south roof", "rails, hooks, flashings, isolators and cable"),
        new(new(2022, 1, 22), "purchase", 1_380.00m, "south roof", "fitting: roofer with scaffold, two days"),
        new(new(2022, 2, 25), "purchase", 920.00m, "south roof", "fitting: electrician, notice to the grid operator and certificate"),
        new(new(2022, 3, 15), "purchase", 2_340.00m, "west roof", "18 modules of 270 W"),
        new(new(2022, 3, 22), "purchase", 1_145.00m, "west roof first inverter", "5 kW inverter"),
        new(new(2022, 3, 30), "purchase", 5_480.00m, "battery", "battery of 9.6 kWh usable, with its own inverter"),
        new(new(2022, 4, 4), "purchase", 1_170.25m, "west roof", "rails, hooks and cable"),
        new(new(2022, 4, 13), "purchase", 560.00m, "battery", "fitting: electrician, half a day"),
        new(new(2022, 4, 19), "purchase", 1_490.00m, "west roof", "fitting: roofer and electrician"),
        new(new(2022, 6, 9), "grant", 2_100.00m, "", "grant for the two roofs"),
        new(new(2022, 7, 28), "purchase", 1_224.00m, "ground array", "6 modules of 550 W"),
        new(new(2022, 8, 11), "purchase", 1_310.00m, "ground array", "frame, ground screws and cable"),
        new(new(2022, 8, 25), "purchase", 1_595.00m, "ground array", "charge controller and 5 kW inverter"),
        new(new(2022, 9, 9), "purchase", 1_480.00m, "ground array", "fitting: trench and electrician"),
        new(new(2022, 10, 1), "insurance", 88.00m, "", "plant added to the house policy, first year"),
        new(new(2022, 12, 30), "running", 36.00m, "", "data card of the loggers, year 2022"),
        new(new(2023, 2, 10), "repair", 64.90m, "ground array", "memory of the logger"),
        new(new(2023, 6, 8), "repair", 165.00m, "west roof first inverter", "call-out, inverter found dead"),
        new(new(2023, 6, 14), "warranty refused", 0.00m, "west roof first inverter", "claim of 1,145.00 refused: surge damage is excluded"),
        new(new(2023, 6, 22), "part", 1_060.00m, "west roof", "another 5 kW inverter"),
        new(new(2023, 6, 27), "labour", 240.00m, "west roof", "electrician, exchange of the inverter"),
        new(new(2023, 8, 19), "labour", 310.00m, "ground array", "string of six modules moved from the west roof"),
        new(new(2023, 8, 21), "purchase", 184.60m, "ground array", "cable, clamps and a combiner for the moved string"),
        new(new(2023, 9, 3), "sale", 120.00m, "west roof first inverter", "dead inverter sold for parts"),
        new(new(2023, 10, 1), "insurance", 91.00m, "", "second year"),
        new(new(2023, 12, 30), "running", 36.00m, "", "data card of the loggers, year 2023"),
        new(new(2024, 5, 3), "running", 140.00m, "", "modules cleaned"),
        new(new(2024, 5, 14), "repair", 75.00m, "south roof", "call-out, one isolator found open"),
        new(new(2024, 10, 1), "insurance", 94.00m, "", "third year"),
        new(new(2024, 12, 30), "running", 38.00m, "", "data card of the loggers, year 2024"),
        new(new(2025, 2, 11), "part", 42.30m, "battery", "fan of the battery's inverter"),
    ];
}
